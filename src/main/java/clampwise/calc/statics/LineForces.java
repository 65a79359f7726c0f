package clampwise.calc.statics;

import java.util.List;

/**
 * What a line of clamps carries.
 *
 * @param reactionsN force of each clamp from all edges on the line [N]; negative for prying
 * @param tributaryN the same by tributary widths, to compare [N]
 * @param held edges on two or more clamps
 * @param notHeld edges with fewer than two clamps, which tip; their load is in no reaction
 */
public record LineForces(
    double[] reactionsN, double[] tributaryN, List<ModuleEdge> held, List<ModuleEdge> notHeld) {}

package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.ModuleType;

/**
 * What the choice of seams for an edge goes by.
 *
 * @param testOverDesign a test load of a clamp-zone table over the design load it stands for
 * @param overhangShare longest overhang over the adjacent span, where the manual states none
 */
record EdgeRules(double testOverDesign, double overhangShare) {

  /**
   * Where the outermost of some clamps stand best, from the corner, if the manual says nothing:
   * with the longest overhang that the spans between them bear [m].
   */
  double fromCornerM(double edgeM, int clamps) {
    return overhangShare * edgeM / (2 * overhangShare + clamps - 1);
  }

  /** Whether an overhang is within what the manual of the module states, if it states any. */
  static boolean allows(ModuleType type, double overhangM) {
    return type.overhangAtMost().filter(most -> Snap.m(most.m()) < overhangM).isEmpty();
  }
}

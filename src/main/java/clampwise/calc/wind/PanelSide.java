package clampwise.calc.wind;

/**
 * What lies beyond one side of an array, seen from one of its panels. Distances are infinite where
 * nothing lies there.
 *
 * @param roofEdgeM from the array's edge to the roof's edge [m]
 * @param nextArrayM from the array's edge to the next array [m]
 * @param nextPanelM from the panel to the next panel beyond the side [m]
 * @param insideM from the array's edge inwards to the panel, 0 for a panel at the edge [m]
 */
public record PanelSide(double roofEdgeM, double nextArrayM, double nextPanelM, double insideM) {}

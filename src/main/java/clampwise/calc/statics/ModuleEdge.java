package clampwise.calc.statics;

/**
 * One supported edge of a module on its line, with the load that it brings there.
 *
 * @param fromM left corner, along the line [m]
 * @param toM right corner [m]
 * @param loadNPerM half of the module's load over the edge's length [N/m], positive toward the
 *     clamps
 */
public record ModuleEdge(double fromM, double toM, double loadNPerM) {

  /**
   * Even load of each of a module's two supported edges: half of what acts on the module.
   *
   * <p>Source: statics of a plate on two lines; common practice for frames. Holds for a pressure
   * that is even over the module.
   *
   * @param pressurePa net pressure normal to the module [Pa]
   * @param depthM distance between the module's supported edges [m]
   * @return load of each edge [N/m]
   */
  public static double loadNPerM(double pressurePa, double depthM) {
    return pressurePa * depthM / 2;
  }
}

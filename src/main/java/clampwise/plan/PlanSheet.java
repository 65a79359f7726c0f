package clampwise.plan;

import java.util.List;

/**
 * One sheet of drawings.
 *
 * @param title what it shows
 * @param plane name of the roof plane on it
 * @param widthMm its width [mm]
 * @param heightMm its height [mm]
 * @param layers what is drawn on it, the lowest first
 */
public record PlanSheet(
    String title, String plane, double widthMm, double heightMm, List<Layer> layers) {

  /** Width of a sheet, A3 across. */
  public static final double WIDTH_MM = 420;

  /** Height of a sheet, A3 across. */
  public static final double HEIGHT_MM = 297;
}

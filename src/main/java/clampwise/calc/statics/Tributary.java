package clampwise.calc.statics;

import java.util.Arrays;

/** Tributary widths: each attachment takes the stretch that is nearer to it than to any other. */
public final class Tributary {

  private Tributary() {}

  /**
   * Tributary width of each attachment: half the way to its neighbours, and all of an overhang.
   *
   * <p>Common practice, no source; exact for reactions only where the edge is cut at each
   * attachment. Holds for attachments in order within the edge.
   *
   * @param fromM left end of the edge [m]
   * @param toM right end of the edge [m]
   * @param placesM attachments from left to right [m]
   * @return widths, which add up to the edge [m]
   */
  public static double[] widthsM(double fromM, double toM, double... placesM) {
    double[] widths = new double[placesM.length];
    int last = placesM.length - 1;
    Arrays.setAll(
        widths,
        i -> {
          double left = i == 0 ? fromM : (placesM[i - 1] + placesM[i]) / 2;
          double right = i == last ? toM : (placesM[i] + placesM[i + 1]) / 2;
          return right - left;
        });
    return widths;
  }
}

package clampwise.calc.en;

import clampwise.calc.Interval;
import clampwise.calc.en.RoofZones.Patch;
import java.util.List;

/**
 * Zones behind a windward edge, in wind axes.
 *
 * @param widthM size b across the wind [m]
 * @param lengthM size d along the wind [m]
 * @param sizes sizes of the zones
 */
record WindwardLayout(double widthM, double lengthM, ZoneSizes sizes) {

  /** Strip, middle and rest: flat roofs, and wind along the ridge or the eaves. */
  List<Patch> open(String nearCorner, String farCorner) {
    return List.of(
        new Patch(nearCorner, downwind(0, sizes.stripM()), new Interval(0, sizes.cornerM())),
        new Patch(
            "G",
            downwind(0, sizes.stripM()),
            new Interval(sizes.cornerM(), widthM - sizes.cornerM())),
        new Patch(
            farCorner, downwind(0, sizes.stripM()), new Interval(widthM - sizes.cornerM(), widthM)),
        new Patch("H", downwind(sizes.stripM(), sizes.middleM()), new Interval(0, widthM)),
        new Patch("I", downwind(sizes.middleM(), lengthM), new Interval(0, widthM)));
  }

  /** Strip and rest: wind on either eave of a monopitch roof. */
  List<Patch> toTheEnd() {
    return List.of(
        new Patch("F", downwind(0, sizes.stripM()), new Interval(0, sizes.cornerM())),
        new Patch(
            "G",
            downwind(0, sizes.stripM()),
            new Interval(sizes.cornerM(), widthM - sizes.cornerM())),
        new Patch("F", downwind(0, sizes.stripM()), new Interval(widthM - sizes.cornerM(), widthM)),
        new Patch("H", downwind(sizes.stripM(), lengthM), new Interval(0, widthM)));
  }

  /** Strip, rest of the windward slope, strip behind the ridge, rest: wind across the ridge. */
  List<Patch> overRidge(double ridgeM) {
    double edgeM = Math.min(sizes.stripM(), ridgeM);
    return List.of(
        new Patch("F", downwind(0, edgeM), new Interval(0, sizes.cornerM())),
        new Patch("G", downwind(0, edgeM), new Interval(sizes.cornerM(), widthM - sizes.cornerM())),
        new Patch("F", downwind(0, edgeM), new Interval(widthM - sizes.cornerM(), widthM)),
        new Patch("H", downwind(edgeM, ridgeM), new Interval(0, widthM)),
        new Patch("J", downwind(ridgeM, ridgeM + sizes.stripM()), new Interval(0, widthM)),
        new Patch("I", downwind(ridgeM + sizes.stripM(), lengthM), new Interval(0, widthM)));
  }

  private Interval downwind(double fromM, double toM) {
    return new Interval(Math.min(fromM, lengthM), Math.min(toM, lengthM));
  }
}

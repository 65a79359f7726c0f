package clampwise.calc.en;

import clampwise.calc.Interval;
import clampwise.calc.en.RoofZones.Patch;
import java.util.List;

/**
 * Zones behind a windward edge, in wind axes.
 *
 * @param widthM size b across the wind [m]
 * @param lengthM size d along the wind [m]
 * @param cornerM length of a corner along the windward edge, e/4 [m]
 * @param stripM depth of the windward strip, e/10 [m]
 * @param middleM distance at which the middle ends, e/2 [m]
 */
record WindwardLayout(
    double widthM, double lengthM, double cornerM, double stripM, double middleM) {

  /** Strip, middle and rest: flat roofs, and wind along the ridge or the eaves. */
  List<Patch> open(String nearCorner, String farCorner) {
    return List.of(
        new Patch(nearCorner, downwind(0, stripM), new Interval(0, cornerM)),
        new Patch("G", downwind(0, stripM), new Interval(cornerM, widthM - cornerM)),
        new Patch(farCorner, downwind(0, stripM), new Interval(widthM - cornerM, widthM)),
        new Patch("H", downwind(stripM, middleM), new Interval(0, widthM)),
        new Patch("I", downwind(middleM, lengthM), new Interval(0, widthM)));
  }

  /** Strip and rest: wind on either eave of a monopitch roof. */
  List<Patch> toTheEnd() {
    return List.of(
        new Patch("F", downwind(0, stripM), new Interval(0, cornerM)),
        new Patch("G", downwind(0, stripM), new Interval(cornerM, widthM - cornerM)),
        new Patch("F", downwind(0, stripM), new Interval(widthM - cornerM, widthM)),
        new Patch("H", downwind(stripM, lengthM), new Interval(0, widthM)));
  }

  /** Strip, rest of the windward slope, strip behind the ridge, rest: wind across the ridge. */
  List<Patch> overRidge(double ridgeM) {
    double edgeM = Math.min(stripM, ridgeM);
    return List.of(
        new Patch("F", downwind(0, edgeM), new Interval(0, cornerM)),
        new Patch("G", downwind(0, edgeM), new Interval(cornerM, widthM - cornerM)),
        new Patch("F", downwind(0, edgeM), new Interval(widthM - cornerM, widthM)),
        new Patch("H", downwind(edgeM, ridgeM), new Interval(0, widthM)),
        new Patch("J", downwind(ridgeM, ridgeM + stripM), new Interval(0, widthM)),
        new Patch("I", downwind(ridgeM + stripM, lengthM), new Interval(0, widthM)));
  }

  private Interval downwind(double fromM, double toM) {
    return new Interval(Math.min(fromM, lengthM), Math.min(toM, lengthM));
  }
}

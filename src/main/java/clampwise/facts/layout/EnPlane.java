package clampwise.facts.layout;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.calc.ZoneWidth.Widths;
import clampwise.calc.en.EnRoof;
import clampwise.calc.en.EnTables;
import clampwise.calc.en.ZoneCoefficients;
import clampwise.calc.en.ZoneSizes;
import clampwise.calc.trail.Work;
import clampwise.job.Building;
import clampwise.job.Building.RoofShape;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * A plane as EN 1991-1-4 asks for it. The plane's own outline gives its sizes; it has to be a
 * rectangle and to span the building, because the zones are measured from the building's edges.
 *
 * @param roof the plane and its building
 * @param leftM left end of its eave [m along]
 * @param bottomM its eave [m up]
 * @param referenceM reference height of the peak pressure [m]
 */
public record EnPlane(EnRoof roof, double leftM, double bottomM, double referenceM) {

  /** The plane of a roof, or why EN 1991-1-4 does not say anything about it. */
  public static Outcome<EnPlane> of(WindRoof asked, Optional<Polygon> outline, EnTables tables) {
    return missing(asked, outline)
        .<Outcome<EnPlane>>map(NotApplicable::new)
        .orElseGet(() -> covered(asked, plane(asked, outline.orElseThrow()), tables));
  }

  private static Outcome<EnPlane> covered(WindRoof asked, EnPlane plane, EnTables tables) {
    return ZoneCoefficients.outside(tables, plane.roof)
        .<Outcome<EnPlane>>map(NotApplicable::new)
        .orElseGet(() -> spanning(asked, plane));
  }

  private static Optional<String> missing(WindRoof asked, Optional<Polygon> outline) {
    if (asked.shape().isEmpty()) {
      return Optional.of("the roof shape of the building is not given (building: roof)");
    }
    if (asked.shape().get() == RoofShape.HIP) {
      return Optional.of("hip roofs of EN 1991-1-4 are not part of this version");
    }
    if (asked.slopeRad().isEmpty()) {
      return Optional.of("the slope of the plane is not given (slope)");
    }
    if (outline.isEmpty()) {
      return Optional.of("the outline of the plane is not given (outline)");
    }
    if (!outline.get().isRectangle()) {
      return Optional.of("the wind zones of EN 1991-1-4 hold for rectangular planes");
    }
    return sizesMissing(asked);
  }

  private static Optional<String> sizesMissing(WindRoof asked) {
    if (asked
        .length(Building::eaveHeight)
        .or(() -> asked.length(Building::meanRoofHeight))
        .isEmpty()) {
      return Optional.of(
          "neither the eave height nor the mean height of the roof is given (building: eave-height)");
    }
    return isRidged(asked) && asked.length(Building::width).isEmpty()
        ? Optional.of(
            "the plan size of the building across the ridge is not given (building: width)")
        : Optional.empty();
  }

  private static EnPlane plane(WindRoof asked, Polygon outline) {
    Envelope box = outline.getEnvelopeInternal();
    double slopeRad = asked.slopeRad().orElseThrow();
    double depthM = Snap.m(box.getHeight() * Math.cos(slopeRad));
    double acrossM = isRidged(asked) ? asked.length(Building::width).orElseThrow() : depthM;
    double riseM = depthM * Math.tan(slopeRad);
    double heightM = Snap.m(heightM(asked, riseM));
    Optional<Double> parapetM = asked.length(Building::parapet);
    EnRoof roof =
        new EnRoof(
            shape(asked.shape().orElseThrow()),
            slopeRad,
            Snap.m(box.getWidth()),
            Math.max(acrossM, depthM),
            depthM,
            heightM,
            parapetM);
    double parapetTopM = heightM - riseM + parapetM.orElse(0.0);
    return new EnPlane(roof, box.getMinX(), box.getMinY(), Snap.m(Math.max(heightM, parapetTopM)));
  }

  /** Height h up to the ridge or high edge (figures 7.6 to 7.8; from memory). */
  private static double heightM(WindRoof asked, double riseM) {
    return asked
        .length(Building::eaveHeight)
        .map(eaveM -> eaveM + riseM)
        .or(() -> asked.length(Building::meanRoofHeight).map(meanM -> meanM + riseM / 2))
        .orElseThrow();
  }

  private static Outcome<EnPlane> spanning(WindRoof asked, EnPlane plane) {
    double leastShare = asked.leastShareOfBuilding();
    boolean isShort =
        asked
            .length(Building::length)
            .filter(lengthM -> plane.roof.alongM() < leastShare * lengthM)
            .isPresent();
    boolean isNarrow =
        asked
            .length(Building::width)
            .filter(widthM -> plane.roof.acrossM() < leastShare * widthM)
            .isPresent();
    return isShort || isNarrow
        ? new NotApplicable<>(
            "the plane covers a part of the building; the zones of EN 1991-1-4 are drawn for planes"
                + " that span it")
        : new Result<>(plane);
  }

  private static boolean isRidged(WindRoof asked) {
    return asked.shape().filter(RoofShape.GABLE::equals).isPresent();
  }

  private static EnRoof.Shape shape(RoofShape shape) {
    return switch (shape) {
      case FLAT -> EnRoof.Shape.FLAT;
      case MONOSLOPE -> EnRoof.Shape.MONOPITCH;
      case GABLE, HIP -> EnRoof.Shape.DUOPITCH;
    };
  }

  /**
   * Width of the windward strip, e/10, and length of a corner, e/4: the larger ones of wind across
   * the eave and along it.
   */
  public Widths widths(EnTables tables) {
    Work unused = Work.unread();
    ZoneSizes across = ZoneSizes.of(tables, roof.alongM(), roof.heightM(), unused);
    ZoneSizes along = ZoneSizes.of(tables, roof.acrossM(), roof.heightM(), unused);
    return new Widths(
        figure(),
        Math.max(across.stripM(), along.stripM()),
        Math.max(across.cornerM(), along.cornerM()));
  }

  String figure() {
    String number =
        switch (roof.shape()) {
          case FLAT -> "7.6";
          case MONOPITCH -> "7.7";
          case DUOPITCH -> "7.8";
        };
    return number + " of EN 1991-1-4";
  }
}

package clampwise.job;

import clampwise.job.Quantity.Azimuth;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Offset;
import clampwise.job.Quantity.Slope;
import java.util.List;
import java.util.Optional;

/**
 * A flat part of the roof. Its axes: along the eave from left to right as seen looking up the
 * slope, and up the slope, measured on the slope; origin at the left end of the eave.
 */
public record Plane(
    @Doc("Name of the roof covering.") Text panel,
    @Doc("Slope, such as 4:12 or 18 deg.") Optional<Slope> slope,
    @Doc("Direction the plane faces.") Optional<Azimuth> azimuth,
    @Doc("Rectangular outline: along the eave x up the slope.") Optional<Size> size,
    @Doc("Kinds of the edges of a rectangular outline.") Optional<Plane.RectangleEdges> edges,
    @Doc(
            "Outline of any shape: corners anticlockwise, each with the kind of the edge that follows.")
        List<Plane.Corner> outline,
    @Doc("Where the seams, structural ribs or crests lie.") Optional<Seams> seams,
    @Doc("Where the purlins or clip lines lie.") Optional<Purlins> purlins,
    @Doc("Distances of end laps up the slope.") List<Offset> endLaps,
    @Doc("Whether panels slide past each other at the end laps; else a run goes through them.")
        Optional<Flag> slidingEndLaps,
    @Doc("Building expansion joints across the eave: distances along it; an empty list for none.")
        Optional<List<Offset>> expansionJoints,
    @Doc("Whether gutters run along the eaves.") Optional<Flag> gutter,
    @Doc("What holds sliding snow back.") Optional<Plane.SnowRetention> snowRetention,
    @Doc("Things on the roof that modules must keep clear of.") Named<Obstruction> obstructions) {

  /** What an edge of a plane is; zones, setbacks and water depend on it. */
  public enum EdgeKind {
    EAVE,
    RIDGE,
    RAKE,
    HIP,
    VALLEY,
    WALL,
    EXPANSION_JOINT,
    STEP
  }

  /** The edges of a rectangular plane; eave below, ridge above, rakes at both sides by default. */
  public record RectangleEdges(
      @Doc("Lower edge.") Optional<Choice<EdgeKind>> bottom,
      @Doc("Upper edge.") Optional<Choice<EdgeKind>> top,
      @Doc("Left edge.") Optional<Choice<EdgeKind>> left,
      @Doc("Right edge.") Optional<Choice<EdgeKind>> right) {}

  /** A corner of the outline and the kind of the edge from here to the next corner. */
  public record Corner(
      @Doc("Where the corner is.") Spot at,
      @Doc("Kind of the edge from here to the next corner.") Choice<EdgeKind> edge) {}

  /** Where seams lie: at a pitch from a first one, or surveyed one by one. */
  public record Seams(
      @Doc("Distance of the first seam from the left end of the eave.") Optional<Offset> first,
      @Doc("Pitch on the drawing, if it differs from the covering's.") Optional<Length> pitch,
      @Doc("How many seams there are; as many as fit when left out.") Optional<Count> count,
      @Doc("Measured positions, cumulatively from the left end of the eave.") List<Offset> surveyed,
      @Doc("CSV file beside the job with the measured positions (columns seam, along).")
          Optional<Text> surveyFile) {}

  /** Snow guards or fences. */
  public record SnowRetention(
      @Doc("What they are fixed to.") Choice<RetentionBase> on,
      @Doc("Whether the loads include the snow that is held back.") Optional<Flag> inLoads) {}

  /** What snow retention is fixed to. */
  public enum RetentionBase {
    MODULES,
    SEAMS,
    STRUCTURE
  }

  /** Purlin or clip lines across the slope. */
  public record Purlins(
      @Doc("Distance of the first line up the slope.") Optional<Offset> first,
      @Doc("Distance between lines.") Optional<Length> spacing,
      @Doc("Each line's distance up the slope, if they are not evenly spaced.") List<Offset> at) {}
}

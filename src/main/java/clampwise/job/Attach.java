package clampwise.job;

import java.util.List;
import java.util.Optional;

/** The attachment schedule of a field; one of its ways is chosen. */
public record Attach(
    @Doc("Clamps on each module edge, each at the seam best placed in the module's clamp zone.")
        Optional<Count> perEdge,
    @Doc("Every n-th seam that crosses a module edge.") Optional<Count> every,
    @Doc("Every n-th seam, by wind zone.") Named<Count> zones,
    @Doc("Number of the first seam that is used, with every or zones.") Optional<Count> from,
    @Doc("Seam numbers by line number (1 is the lowest line), or for all lines.")
        Named<List<Count>> lines,
    @Doc("Points, one by one.") List<Attach.Point> points,
    @Doc("CSV file beside the job (columns along, up, part).") Optional<Text> file) {

  /** One attachment. */
  public record Point(
      @Doc("Where it sits.") Spot at,
      @Doc("Seam clamp or rib bracket, if not the field's.") Optional<Text> part,
      @Doc("Mid or end clamp on it, if not the field's.") Optional<Text> clamp) {}
}

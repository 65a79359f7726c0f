package clampwise.facts.layout;

import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;

/**
 * An attachment as the schedule places it.
 *
 * @param line number of its line, 0 if it is on none
 */
record Planned(
    String name,
    int line,
    double alongM,
    double upM,
    Optional<Text> part,
    Optional<Text> clamp,
    Span at) {

  /** The crossing of a line with a seam. */
  static Planned crossing(String field, int line, double upM, SeamLine seam, Span at) {
    return new Planned(
        field + ".L" + line + " " + seam.name(),
        line,
        seam.alongM(),
        upM,
        Optional.empty(),
        Optional.empty(),
        at);
  }
}

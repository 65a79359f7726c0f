package clampwise.rulebook;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Position;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** A fact invented for these tests: does a clamp open wide enough for a frame? */
public record Grip(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    double frameM,
    double openM,
    Optional<String> fitting,
    List<String> others,
    Optional<Limit> limitFrom)
    implements Fact {
  static final String FILE = "job.yaml";

  static Grip of(int line, String module, double frameM, double openM) {
    Span at = new Span(FILE, new Position(line, 5), new Position(line, 9));
    Subject subject = Subject.of("fields.A", module);
    return new Grip(
        subject,
        Subject.of("fields.A"),
        at,
        Unit.MILLIMETRE,
        frameM,
        openM,
        Optional.empty(),
        List.of(),
        Optional.empty());
  }
}

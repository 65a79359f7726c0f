package clampwise.facts.durability;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.weight.ClearSpace;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;

/**
 * Asks whether air gets through under the modules; a gap too small for the heat is found by that.
 */
record AirGaps(Weathering weathering, Heat heat) {

  void ask() {
    for (FieldLayout field : weathering.layout().fields()) {
      Subject subject = Subjects.field(field.name()).part("air below");
      Optional<ClearSpace> space = ClearSpace.of(field);
      if (space.isEmpty()) {
        weathering.missing(
            AirGap.class, subject, ClearSpace.unknown(field, weathering.unreadable()));
      } else if (!heat.isGapTooSmall(field, space.get())) {
        weathering.add(fact(subject, field, space.get()));
      }
    }
  }

  private AirGap fact(Subject subject, FieldLayout field, ClearSpace space) {
    Limit least = weathering.limit("airflow-gap-least");
    return new AirGap(
        subject,
        at(field),
        space.unit(),
        field.name(),
        space.m(),
        Snap.m(least.si()),
        Optional.of(least));
  }

  /** The value that decides how high a field stands. */
  static Span at(FieldLayout field) {
    return field
        .field()
        .topHeight()
        .map(Length::at)
        .or(() -> field.field().attachment().map(Text::at))
        .orElse(field.at());
  }
}

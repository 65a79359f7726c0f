package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.job.LengthRange;
import clampwise.job.Panel;
import clampwise.job.Quantity;
import clampwise.job.Quantity.Length;
import clampwise.job.RibBracket;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of each bracket on a corrugated sheet whether it finds a flat to bear on. */
final class FlatBearings extends PartQuestion {

  FlatBearings() {
    super(FlatBearing.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    if (use.part() instanceof RibBracket bracket
        && use.panel().kind().value() == Panel.Kind.CORRUGATED) {
      if (bracket.bearsOn().isEmpty()) {
        String reason = use.ofPart("what " + use.name() + " bears on", "bears-on");
        missing(use, asked, reason, use.partAt());
      } else {
        asked.answers().add(fact(use, bracket, asked));
      }
    }
  }

  private static FlatBearing fact(PartUse use, RibBracket bracket, Asked asked) {
    Optional<Limit> general =
        bearsOnFlat(bracket) && bracket.ribTop().isEmpty()
            ? Optional.of(asked.limits().get("bearing-flat-least"))
            : Optional.empty();
    return new FlatBearing(
        use.subject(),
        use.cause(),
        use.name().at(),
        use.panel().height().map(Quantity::unit).orElse(Unit.MILLIMETRE),
        use.name().value(),
        use.plane().panelName(),
        use.panel().topWidth().map(Length::m).orElse(0.0),
        neededM(bracket, general),
        general,
        asked.fitting(use));
  }

  private static double neededM(RibBracket bracket, Optional<Limit> general) {
    double statedM = bracket.ribTop().map(LengthRange::min).map(Length::m).orElse(0.0);
    return bearsOnFlat(bracket) ? general.map(Limit::si).orElse(statedM) : 0;
  }

  private static boolean bearsOnFlat(RibBracket bracket) {
    return bracket.bearsOn().filter(b -> b.value() == RibBracket.Bearing.FLAT).isPresent();
  }
}

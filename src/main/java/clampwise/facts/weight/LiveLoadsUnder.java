package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Claims;
import clampwise.job.Flag;
import java.util.Map;
import java.util.Optional;

/** Holds what the drawings say of roof live load under the array against the room there. */
final class LiveLoadsUnder {

  private LiveLoadsUnder() {}

  static void ask(WeighedField asked) {
    asked.layout().job().claims().flatMap(Claims::liveLoadUnderArray).ifPresent(c -> ask(asked, c));
  }

  private static void ask(WeighedField asked, Flag counted) {
    ClearSpace.of(asked.field())
        .ifPresentOrElse(
            clear -> asked.answers().add(fact(asked, counted, clear)),
            () ->
                asked.missing(LiveLoadUnder.class, asked.clearSpaceUnknown(), asked.field().at()));
  }

  private static LiveLoadUnder fact(WeighedField asked, Flag counted, ClearSpace clear) {
    Limit most = asked.limits().get("live-load-clear-space-most");
    return new LiveLoadUnder(
        asked.subject().part("live load"),
        Subject.of("claims", "live load under the array"),
        counted.at(),
        clear.unit(),
        Map.of("mostM", most.unit()),
        asked.field().name(),
        counted.value(),
        clear.m(),
        Snap.m(most.si()),
        Optional.of(most));
  }
}

package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import java.util.Map;
import java.util.Optional;

/** Holds the clear space under each field against the expedited path. */
final class ExpeditedGaps {

  private static final String WHAT = "clear space";

  private ExpeditedGaps() {}

  static void ask(ExpeditedPath path) {
    ClearSpace.of(path.asked().field())
        .ifPresentOrElse(
            clear -> path.add(fact(path, clear)),
            () -> path.missing(ExpeditedGap.class, WHAT, path.asked().clearSpaceUnknown()));
  }

  private static ExpeditedGap fact(ExpeditedPath path, ClearSpace clear) {
    Limit most = path.limit("expedited-clear-space-most");
    return new ExpeditedGap(
        path.subject(WHAT),
        ExpeditedPath.cause(WHAT),
        path.at(),
        clear.unit(),
        Map.of("mostM", most.unit()),
        path.asked().field().name(),
        clear.m(),
        Snap.m(most.si()),
        Optional.of(most));
  }
}

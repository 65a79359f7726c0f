package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.roof.Stretch;
import clampwise.facts.roof.Stretches;
import java.util.Comparator;
import java.util.Optional;

/** Holds the spacing of attachments against the expedited path. */
final class ExpeditedSpacings {

  private static final String WHAT = "spacing";

  private ExpeditedSpacings() {}

  static void ask(ExpeditedPath path) {
    WeighedField asked = path.asked();
    Optional<String> unknown = asked.field().attachmentsUnknown();
    if (unknown.isPresent()) {
      path.missing(ExpeditedSpacing.class, WHAT, unknown.get());
    } else {
      new Stretches(asked.field(), asked.limits())
          .alongLines().stream()
              .max(Comparator.comparingDouble(Stretch::spacingM))
              .ifPresent(widest -> path.add(fact(path, widest)));
    }
  }

  private static ExpeditedSpacing fact(ExpeditedPath path, Stretch widest) {
    Limit most = path.limit("expedited-spacing-most");
    return new ExpeditedSpacing(
        path.subject(WHAT),
        ExpeditedPath.cause(WHAT),
        path.at(),
        most.unit(),
        widest.from().name(),
        widest.to().name(),
        Snap.m(widest.spacingM()),
        Snap.m(most.si()),
        Optional.of(most));
  }
}

package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/** All questions about loads: each field's loads are computed once for all of them. */
public final class LoadQuestions {

  public static final List<Question> ALL = List.of(LoadQuestions::ask);

  private static final List<Class<? extends Fact>> ANSWERS =
      List.of(AttachmentUse.class, ModuleUse.class, LimitStates.class, AllowedSpacing.class);

  private LoadQuestions() {}

  private static void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        ask(new FieldSite(layout, plane, field, limits), answers);
      }
    }
  }

  private static void ask(FieldSite site, Answers answers) {
    Optional<String> unknown = site.field().attachmentsUnknown();
    Outcome<FieldLoads> loads =
        unknown.<Outcome<FieldLoads>>map(NotApplicable::new).orElseGet(() -> FieldLoads.of(site));
    if (loads instanceof Result<FieldLoads> known) {
      ask(known.value(), answers);
    } else if (loads instanceof NotApplicable<FieldLoads> none) {
      Span at = site.field().at();
      ANSWERS.forEach(type -> answers.missing(type, site.subject(), none.reason(), at));
    }
  }

  private static void ask(FieldLoads loads, Answers answers) {
    Shares shares = Shares.of(loads.site());
    AttachmentUses.ask(loads, shares, answers);
    ModuleUses.ask(loads, answers);
    MixedStates.ask(loads.site(), loads.standard().method(), answers);
    AllowedSpacings.ask(loads, shares, answers);
  }
}

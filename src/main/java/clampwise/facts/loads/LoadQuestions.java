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
import clampwise.job.Claims;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All questions about loads: each field's loads are computed once for all of them. */
public final class LoadQuestions {

  public static final List<Question> ALL =
      List.of(LoadQuestions::ask, new StatedChoices(), new StepSnows());

  private static final List<Class<? extends Fact>> ANSWERS =
      List.of(
          AttachmentUse.class,
          ModuleUse.class,
          LimitStates.class,
          AllowedSpacing.class,
          ColumnSlip.class,
          PriedEdge.class,
          EqualisationCredit.class);

  private LoadQuestions() {}

  private static void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      List<Outcome<LoadedField>> fields = new ArrayList<>();
      FieldsOfPlane onPlane = new FieldsOfPlane(plane);
      for (FieldLayout field : plane.fields()) {
        fields.add(ask(new FieldSite(layout, plane, field, limits, onPlane), answers));
      }
      if (!fields.isEmpty()) {
        ask(PlaneLoads.of(layout.job(), plane, limits, fields), answers);
      }
    }
    layout
        .job()
        .claims()
        .flatMap(Claims::utilisation)
        .ifPresent(stated -> UtilisationClaims.ask(stated, limits, answers));
  }

  private static void ask(PlaneLoads plane, Answers answers) {
    ClipLoads.ask(plane, answers);
    FixedPointForces.ask(plane, answers);
  }

  private static Outcome<LoadedField> ask(FieldSite site, Answers answers) {
    Optional<String> unknown = site.field().attachmentsUnknown();
    Outcome<FieldLoads> loads =
        unknown.<Outcome<FieldLoads>>map(NotApplicable::new).orElseGet(() -> FieldLoads.of(site));
    Outcome<LoadedField> field = loads.then(known -> new Result<>(LoadedField.of(known)));
    if (field instanceof Result<LoadedField> known) {
      ask(known.value(), answers);
    } else if (field instanceof NotApplicable<LoadedField> none) {
      Span at = site.field().at();
      ANSWERS.forEach(type -> answers.missing(type, site.subject(), none.reason(), at));
      ClaimsUnknown.ask(site, none.reason(), answers);
    }
    return field;
  }

  private static void ask(LoadedField field, Answers answers) {
    FieldLoads loads = field.loads();
    Shares shares = field.shares();
    AttachmentUses.ask(field, answers);
    ModuleUses.ask(loads, answers);
    MixedStates.ask(loads.site(), loads.standard(), answers);
    AllowedSpacings.ask(field, answers);
    ColumnSlips.ask(field, answers);
    PriedEdges.ask(field, answers);
    EqualisationCredits.ask(loads, answers);
    ClaimedLoads.ask(loads, shares, answers);
  }
}

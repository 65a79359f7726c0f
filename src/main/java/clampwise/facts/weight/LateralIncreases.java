package clampwise.facts.weight;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Building;
import clampwise.job.Quantity.Force;
import java.util.List;
import java.util.Optional;

/** Screens the bracing of the building for the weight of all arrays together. */
final class LateralIncreases {

  private static final Subject BRACING = Subject.of("building", "bracing");

  private final Layout layout;
  private final Answers answers;
  private final Members members;

  private LateralIncreases(Layout layout, Answers answers) {
    this.layout = layout;
    this.answers = answers;
    this.members = Members.of(layout);
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    if (!layout.fields().isEmpty()) {
      new LateralIncreases(layout, answers).ask(limits);
    }
  }

  private void ask(Limits limits) {
    Optional<Force> design =
        members.building().flatMap(Building::lateralWeight).filter(force -> force.n() > 0);
    if (members.checked().isEmpty()) {
      missing("what is said of the building's members could not be read");
    } else if (design.isPresent()) {
      ask(design.get(), limits);
    } else if (!members.isCheckEnough()) {
      missing(Members.UNKNOWN);
    }
  }

  private void ask(Force design, Limits limits) {
    AllFields all = AllFields.of(layout, limits, answers);
    all.weightUnknown()
        .ifPresentOrElse(
            this::missing,
            () -> answers.add(fact(all.weightN(), design, limits.get("lateral-increase-most"))));
  }

  private LateralIncrease fact(double weightN, Force design, Limit most) {
    return new LateralIncrease(
        BRACING,
        BRACING,
        design.at(),
        design.unit(),
        members.isCheckEnough(),
        weightN,
        design.n(),
        Snap.m(weightN / design.n()),
        most.si(),
        Optional.of(most));
  }

  private void missing(String reason) {
    answers.missing(LateralIncrease.class, BRACING, reason, members.at());
  }

  /** All fields of a job together. */
  record AllFields(Layout layout, List<WeighedField> fields) {

    static AllFields of(Layout layout, Limits limits, Answers answers) {
      return new AllFields(
          layout,
          layout.planes().stream()
              .flatMap(
                  plane ->
                      plane.fields().stream()
                          .map(field -> new WeighedField(layout, plane, field, limits, answers)))
              .toList());
    }

    Optional<String> weightUnknown() {
      return incomplete(layout)
          .or(() -> fields.stream().flatMap(f -> f.weightUnknown().stream()).findFirst());
    }

    /** A field that is not laid out as written would be left out of every sum. */
    static Optional<String> incomplete(Layout layout) {
      if (layout.job().unreadable().holds("fields")) {
        return Optional.of("the fields could not be read");
      }
      return layout.incomplete().stream()
          .findFirst()
          .map(field -> "field " + field + " could not be read or laid out as written");
    }

    double weightN() {
      return fields.stream()
          .mapToDouble(
              asked ->
                  asked.field().modules().stream()
                      .mapToDouble(module -> asked.weight(module.type()).n())
                      .sum())
          .sum();
    }
  }
}

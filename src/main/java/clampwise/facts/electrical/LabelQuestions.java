package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Snap;
import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Electrical.Label;
import clampwise.job.Electrical.Labels;
import clampwise.job.ElectricalCode;
import clampwise.job.Quantity.Length;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks, under the NEC, which labels the drawings show. */
record LabelQuestions(Wiring wiring, ElectricalCode code, Labels labels) {

  private static final Subject LABELS = Wiring.ELECTRICAL.part("labels");

  static void ask(Wiring wiring) {
    Outcome<ElectricalCode> code = wiring.code();
    Optional<Labels> labels = wiring.electrical().labels();
    if (code instanceof NotApplicable<ElectricalCode> unknown) {
      wiring.missing(LabelNeeded.class, LABELS, unknown.reason());
    } else if (code.result().orElseThrow().isNec()) {
      labels.ifPresentOrElse(
          written -> new LabelQuestions(wiring, code.result().orElseThrow(), written).ask(),
          () ->
              wiring.missing(
                  LabelNeeded.class, LABELS, wiring.lacks("what labels are shown", "labels")));
    }
  }

  private void ask() {
    if (labels.shown().isEmpty() || wiring.isLost("labels", "shown")) {
      missing(LabelNeeded.class, "the list of labels", "shown");
    } else {
      List<Choice<Label>> shown = labels.shown().get();
      new CodeLimits(table(), code).rows().forEach(row -> ask(row, shown));
    }
    askLetters();
    labels
        .reflective()
        .ifPresentOrElse(
            flag ->
                wiring
                    .answers()
                    .add(
                        new LabelReflects(
                            LABELS.part("rapid shutdown"), flag.at(), Unit.NUMBER, flag.value())),
            () -> missing(LabelReflects.class, "whether labels are reflective", "reflective"));
  }

  private void ask(Table.Row row, List<Choice<Label>> shown) {
    boolean drawn = shown.stream().anyMatch(label -> label.toString().equals(row.word("label")));
    Limit from =
        new Limit(
            "labels",
            1,
            Unit.NUMBER,
            code.document(),
            Choice.word(code).substring("nec-".length()),
            row.word("clause"),
            row.word("obtained"),
            table().source().validity());
    wiring
        .answers()
        .add(
            new LabelNeeded(
                LABELS.part(row.word("words")),
                at(shown),
                Unit.NUMBER,
                row.word("words"),
                drawn,
                Optional.of(from)));
  }

  private Span at(List<Choice<Label>> shown) {
    return shown.stream()
        .map(Choice::at)
        .findFirst()
        .orElseGet(() -> wiring.job().at("electrical", "labels", "shown"));
  }

  private Table table() {
    return wiring.tables().get("labels");
  }

  private void askLetters() {
    Optional<Length> letters = labels.letters();
    if (letters.isEmpty()) {
      missing(LabelLetters.class, "the height of the letters of labels", "letters");
      return;
    }
    Limit least = wiring.limits().get("rapid-shutdown-letters-least");
    wiring
        .answers()
        .add(
            new LabelLetters(
                LABELS.part("rapid shutdown"),
                letters.get().at(),
                letters.get().unit(),
                Snap.m(letters.get().m()),
                Snap.m(least.si()),
                Optional.of(least)));
  }

  private void missing(Class<? extends Fact> type, String what, String key) {
    wiring.missing(type, LABELS, wiring.lacks(what, "labels", key));
  }
}

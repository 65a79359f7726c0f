package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Documents.Sheet;
import clampwise.job.Documents.Shown;
import clampwise.job.Named;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;

/** Asks what the drawings declare and show: each its units and scale, all of a kind the rest. */
record DrawingContents(Submittal submittal) {

  static void ask(Submittal submittal) {
    DrawingContents contents = new DrawingContents(submittal);
    for (Table.Row row : submittal.rows("basics")) {
      submittal.sheets(row.word("sheet")).forEach(item -> contents.basics(item, row));
    }
    for (Table.Row row : submittal.rows("contents")) {
      contents.contents(submittal.sheets(row.word("sheet")), row);
    }
  }

  private void basics(Named.Item<Sheet> item, Table.Row row) {
    Subject subject = Submittal.subject(item).part(row.word("shows"));
    if (isUnknown(item)) {
      submittal.missing(DrawingBasics.class, subject, unknown());
      return;
    }
    submittal
        .answers()
        .add(
            new DrawingBasics(
                subject,
                at(item),
                Unit.NUMBER,
                item.name().value(),
                words(item),
                row.word("words"),
                shows(item, row),
                submittal.from("basics", row)));
  }

  private void contents(List<Named.Item<Sheet>> items, Table.Row row) {
    if (items.isEmpty()) {
      return;
    }
    boolean drawn = items.stream().anyMatch(item -> shows(item, row));
    Subject subject = Submittal.DOCUMENTS.part(words(items.get(0))).part(row.word("shows"));
    if (!drawn && items.stream().anyMatch(this::isUnknown)) {
      submittal.missing(PlanContents.class, subject, unknown());
      return;
    }
    submittal
        .answers()
        .add(
            new PlanContents(
                subject,
                at(items.get(0)),
                Unit.NUMBER,
                words(items.get(0)),
                row.word("words"),
                drawn,
                submittal.from("contents", row)));
  }

  private String words(Named.Item<Sheet> item) {
    return submittal.row(item.value().kind().value()).orElseThrow().word("words");
  }

  private boolean isUnknown(Named.Item<Sheet> item) {
    String name = item.name().value();
    return item.value().shows().isEmpty() || submittal.isLost("sheets", name, "shows");
  }

  private static String unknown() {
    return "what the drawings show is not given (shows)";
  }

  private static boolean shows(Named.Item<Sheet> item, Table.Row row) {
    for (Choice<Shown> shown : item.value().shows().orElse(List.of())) {
      if (shown.toString().equals(row.word("shows"))) {
        return true;
      }
    }
    return false;
  }

  private static Span at(Named.Item<Sheet> item) {
    List<Choice<Shown>> shows = item.value().shows().orElse(List.of());
    return shows.isEmpty() ? item.name().at() : shows.get(0).at();
  }
}

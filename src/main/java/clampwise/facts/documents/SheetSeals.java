package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.job.Choice;
import clampwise.job.Documents.Project;
import clampwise.job.Documents.Sheet;
import clampwise.job.Flag;
import clampwise.job.Named;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of the sheets that need an engineer's seal whether they have it. */
record SheetSeals(Submittal submittal) {

  static void ask(Submittal submittal) {
    Optional<Choice<Project>> project = submittal.documents().project();
    if (project.isEmpty()) {
      String reason = submittal.lacks("the kind of project", "project");
      submittal.missing(SheetSeal.class, Submittal.DOCUMENTS.part("seals"), reason);
      return;
    }
    SheetSeals seals = new SheetSeals(submittal);
    for (Table.Row row : submittal.rows("seals")) {
      if (Submittal.isYes(row, project.get().toString())) {
        submittal.sheets(row.word("sheet")).forEach(item -> seals.judge(item, row));
      }
    }
  }

  private void judge(Named.Item<Sheet> item, Table.Row row) {
    Optional<Flag> sealed = item.value().sealed();
    if (sealed.isEmpty()) {
      String reason = "whether calculations and diagrams are sealed is not given (sealed)";
      submittal.missing(SheetSeal.class, Submittal.subject(item), reason);
      return;
    }
    submittal
        .answers()
        .add(
            new SheetSeal(
                Submittal.subject(item),
                sealed.get().at(),
                Unit.NUMBER,
                item.name().value(),
                row.word("words"),
                sealed.get().value(),
                submittal.from("seals", row)));
  }
}

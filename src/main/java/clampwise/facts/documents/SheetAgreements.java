package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Documents.Sheet;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Asks whether the sheets of a package belong together: one revision, one module. */
record SheetAgreements(Submittal submittal, Optional<Text> current, Set<String> drawn) {

  static void ask(Submittal submittal) {
    SheetAgreements agreements =
        new SheetAgreements(submittal, submittal.layout().job().revision(), drawn(submittal));
    for (Named.Item<Sheet> item : submittal.documents().sheets().all()) {
      Optional<Table.Row> row = submittal.row(item.value().kind().value());
      if (row.isPresent()) {
        agreements.askRevision(item, row.get());
        agreements.askModule(item, row.get());
      }
    }
  }

  private static Set<String> drawn(Submittal submittal) {
    Set<String> names = new TreeSet<>();
    for (FieldLayout field : submittal.layout().fields()) {
      for (PlacedModule module : field.modules()) {
        names.add(module.typeName());
      }
    }
    return names;
  }

  /** A data sheet or a letter has a revision of its own. */
  private void askRevision(Named.Item<Sheet> item, Table.Row row) {
    if (!Submittal.isYes(row, "revised")) {
      return;
    }
    Optional<Text> own = item.value().revision();
    if (current.isEmpty()) {
      String what = "the revision of the drawings";
      missing(item, submittal.unreadable().missing(what, "revision"));
    } else if (own.isEmpty()) {
      missing(item, "no revision is named on documents that follow the drawings (revision)");
    } else {
      submittal.answers().add(revision(item, row, own.get(), current.get().value()));
    }
  }

  private void missing(Named.Item<Sheet> item, String reason) {
    submittal.missing(SheetRevision.class, Submittal.subject(item), reason);
  }

  private static SheetRevision revision(
      Named.Item<Sheet> item, Table.Row row, Text own, String now) {
    return new SheetRevision(
        Submittal.subject(item),
        own.at(),
        Unit.NUMBER,
        item.name().value(),
        row.word("words"),
        own.value(),
        now,
        own.value().equals(now));
  }

  private void askModule(Named.Item<Sheet> item, Table.Row row) {
    Optional<Text> own = item.value().module();
    Subject subject = Submittal.subject(item);
    if (own.isPresent() && drawn.isEmpty()) {
      submittal.missing(SheetModule.class, subject, "no module of the layout is known");
    } else if (own.isPresent()) {
      submittal.answers().add(module(item, row, own.get()));
    } else if (Submittal.isYes(row, "names-module")) {
      String reason = "no module is named on documents that rest on one (module)";
      submittal.missing(SheetModule.class, subject, reason);
    }
  }

  private SheetModule module(Named.Item<Sheet> item, Table.Row row, Text own) {
    return new SheetModule(
        Submittal.subject(item),
        own.at(),
        Unit.NUMBER,
        item.name().value(),
        row.word("words"),
        own.value(),
        String.join(" and ", drawn),
        drawn.contains(own.value()));
  }
}

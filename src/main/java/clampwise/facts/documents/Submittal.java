package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Tables;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Documents;
import clampwise.job.Documents.Sheet;
import clampwise.job.Documents.SheetKind;
import clampwise.job.Named;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The documents of a job, with what the questions about them need. */
record Submittal(Layout layout, Documents documents, Answers answers) {

  static final Subject DOCUMENTS = Subject.of("documents");

  private static final String YES = "yes";

  /** The rows of a table of documents. */
  List<Table.Row> rows(String table) {
    return table(table).rows();
  }

  private Table table(String key) {
    return tables().get(key);
  }

  private Tables tables() {
    return layout.catalogue().codes().file("documents.yaml");
  }

  /** Where a row of a table comes from. */
  Optional<Limit> from(String table, Table.Row row) {
    Table whole = table(table);
    return Optional.of(
        new Limit(
            table,
            1,
            Unit.NUMBER,
            whole.source().document(),
            whole.source().edition(),
            whole.source().clause(),
            row.words().getOrDefault("obtained", whole.source().obtained()),
            whole.source().validity()));
  }

  static boolean isYes(Table.Row row, String column) {
    return YES.equals(row.word(column));
  }

  /** All sheets of a kind, in the order written. */
  List<Named.Item<Sheet>> sheets(String kind) {
    List<Named.Item<Sheet>> found = new ArrayList<>();
    for (Named.Item<Sheet> item : documents.sheets().all()) {
      if (Choice.word(item.value().kind().value()).equals(kind)) {
        found.add(item);
      }
    }
    return found;
  }

  static Subject subject(Named.Item<Sheet> item) {
    return Subject.of("documents.sheets." + item.name().value());
  }

  /** What a document is, in words; {@code other} has none. */
  Optional<Table.Row> row(SheetKind kind) {
    return table("package").row("sheet", Choice.word(kind));
  }

  Unreadable unreadable() {
    return layout.job().unreadable();
  }

  boolean isLost(String... path) {
    return unreadable().touches(under(path));
  }

  /** Says that something of the documents is not given, or could not be read. */
  String lacks(String what, String... path) {
    return unreadable().missing(what, under(path));
  }

  private static String[] under(String... path) {
    return Stream.concat(Stream.of("documents"), Stream.of(path)).toArray(String[]::new);
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, Subjects.at(subject, layout.job()));
  }

  /** Where what is missing would be written. */
  Span at() {
    return layout.job().at("documents");
  }
}

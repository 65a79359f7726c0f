package clampwise.job;

import clampwise.job.CsvColumns.Wanted;
import clampwise.source.CsvTable;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns CSV files beside the job into the lists they stand for; their values point into the CSV.
 */
final class CsvValues {

  private static final String SURVEY = "survey-file";
  private static final String SURVEYED = "surveyed";
  private static final String FILE = "file";
  private static final String POINTS = "points";
  private static final Wanted SEAMS = new Wanted(List.of("seam", "along"), List.of());
  private static final Wanted ATTACHMENTS =
      new Wanted(List.of("along", "up"), List.of("part", "clamp"));

  private final SourceFiles files;
  private final Lost lost;
  private final Problems problems;

  CsvValues(SourceFiles files, Lost lost, Problems problems) {
    this.files = files;
    this.lost = lost;
    this.problems = problems;
  }

  /** The job with the lists of all its CSV files in it. */
  Node.Mapping in(Node.Mapping root) {
    Node.Mapping planes = inEach(root, "planes", plane -> inside(plane, "seams", this::surveyed));
    return inEach(planes, "fields", field -> inside(field, "attach", this::points));
  }

  private interface Change {
    Node.Mapping of(Node.Mapping mapping);
  }

  private static Node.Mapping inEach(Node.Mapping root, String key, Change change) {
    return inside(
        root,
        key,
        all -> {
          List<Node.Entry> entries = new ArrayList<>(all.entries().size());
          for (Node.Entry entry : all.entries()) {
            Node value = entry.value();
            Node changed = value instanceof Node.Mapping mapping ? change.of(mapping) : value;
            entries.add(new Node.Entry(entry.key(), changed));
          }
          return new Node.Mapping(entries, all.at());
        });
  }

  /** What does not change stays the same node, so that what was said of it still holds. */
  @SuppressWarnings("ReferenceEquality") // nodes that are dropped are known by identity
  private static Node.Mapping inside(Node.Mapping outer, String key, Change change) {
    return outer
        .mapping(key)
        .map(
            inner -> {
              Node.Mapping changed = change.of(inner);
              return changed == inner ? outer : outer.with(key, changed);
            })
        .orElse(outer);
  }

  private Node.Mapping surveyed(Node.Mapping seams) {
    return withList(seams, SURVEY, SURVEYED, SEAMS, table -> positions(table));
  }

  private Node.Mapping points(Node.Mapping attach) {
    return withList(attach, FILE, POINTS, ATTACHMENTS, table -> spots(table));
  }

  private interface Rows {
    List<Node> of(CsvColumns table);
  }

  private Node.Mapping withList(
      Node.Mapping mapping, String fileKey, String listKey, Wanted wanted, Rows rows) {
    Optional<Node.Scalar> name =
        mapping.get(fileKey).filter(Node.Scalar.class::isInstance).map(Node.Scalar.class::cast);
    if (name.isEmpty() || name.get().isEmpty()) {
      return mapping;
    }
    if (mapping.get(listKey).isPresent()) {
      String found = "both " + fileKey + " and " + listKey;
      problems.add(Problem.of(name.get().at(), found, "one of the two"));
      return mapping;
    }
    int before = problems.count();
    Optional<Node.Sequence> list =
        table(name.get(), wanted).map(table -> new Node.Sequence(rows.of(table), table.at()));
    if (problems.count() > before) {
      lost.add(name.get());
    }
    return list.map(items -> mapping.with(listKey, items)).orElse(mapping);
  }

  private Optional<CsvColumns> table(Node.Scalar name, Wanted wanted) {
    return files
        .read(name, problems)
        .flatMap(
            beside ->
                CsvTable.read(beside.file(), beside.text(), problems)
                    .flatMap(table -> CsvColumns.of(table, wanted, problems)));
  }

  private List<Node> positions(CsvColumns table) {
    List<Node> along = new ArrayList<>();
    for (List<Node.Scalar> row : table.rows()) {
      table.cell(row, "along").ifPresent(along::add);
      table.cell(row, "seam").ifPresent(seam -> checkNumber(seam, along.size()));
    }
    return along;
  }

  private void checkNumber(Node.Scalar seam, int expected) {
    if (!seam.text().equals(Integer.toString(expected))) {
      String found = "seam " + Reading.quoted(seam.text());
      problems.add(
          Problem.of(seam.at(), found, "seam " + expected + ": seams are numbered 1, 2, 3 ..."));
    }
  }

  private static List<Node> spots(CsvColumns table) {
    List<Node> points = new ArrayList<>(table.rows().size());
    for (List<Node.Scalar> row : table.rows()) {
      spot(table, row).ifPresent(points::add);
    }
    return points;
  }

  private static Optional<Node> spot(CsvColumns table, List<Node.Scalar> row) {
    Optional<Node.Scalar> along = table.cell(row, "along");
    Optional<Node.Scalar> up = table.cell(row, "up");
    if (along.isEmpty() || up.isEmpty()) {
      return Optional.empty();
    }
    Span at = new Span(along.get().at().file(), along.get().at().start(), up.get().at().end());
    List<Node.Entry> entries = new ArrayList<>();
    entries.add(
        new Node.Entry(
            new Node.Scalar("at", false, at),
            new Node.Sequence(List.of(along.get(), up.get()), at)));
    for (String key : List.of("part", "clamp")) {
      table
          .written(row, key)
          .ifPresent(
              cell -> entries.add(new Node.Entry(new Node.Scalar(key, false, cell.at()), cell)));
    }
    return Optional.of(new Node.Mapping(entries, at));
  }
}

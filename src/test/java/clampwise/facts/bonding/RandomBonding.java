package clampwise.facts.bonding;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LayoutBuilder;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * A field of columns of different heights with jumpers and lugs here and there, and its graph as
 * plain lists made from the same dice, without any code of the program.
 */
final class RandomBonding {

  private static final double ALONG_M = 1.722;
  private static final double UP_M = 1.134;
  private static final double GAP_M = 0.012;

  private final List<Integer> rowsOf = new ArrayList<>();
  private final List<Integer> startOf = new ArrayList<>();
  final List<String> frames = new ArrayList<>();
  final Set<List<String>> joints = new LinkedHashSet<>();
  final Set<String> lugs = new TreeSet<>();

  RandomBonding(Random dice, int mostColumns, int mostRows) {
    int columns = 1 + dice.nextInt(mostColumns);
    for (int column = 1; column <= columns; column++) {
      addColumn(column, dice.nextInt(2), 1 + dice.nextInt(mostRows));
    }
    List<List<String>> beside = beside();
    double share = dice.nextDouble();
    beside.stream().filter(pair -> dice.nextDouble() < share).forEach(joints::add);
    for (int i = 0; i <= dice.nextInt(3); i++) {
      lugs.add(frames.get(dice.nextInt(frames.size())));
    }
  }

  private RandomBonding() {}

  /** Columns of one height, tied along their lowest row, with a lug at one end. */
  static RandomBonding chain(int columns, int rows) {
    return chain(columns, rows, 1);
  }

  /** The same with its lug on the lowest frame of another column. */
  static RandomBonding chain(int columns, int rows, int lug) {
    RandomBonding chain = new RandomBonding();
    for (int column = 1; column <= columns; column++) {
      chain.addColumn(column, 0, rows);
      if (column > 1) {
        chain.joints.add(List.of(name(1, column - 1), name(1, column)));
      }
    }
    chain.lugs.add(name(1, lug));
    return chain;
  }

  /** The same with its columns from right to left. */
  RandomBonding mirrored() {
    RandomBonding other = new RandomBonding();
    for (int column = rowsOf.size(); column >= 1; column--) {
      other.addColumn(rowsOf.size() + 1 - column, startOf.get(column - 1), rowsOf.get(column - 1));
    }
    joints.forEach(pair -> other.joints.add(pair.stream().map(this::turned).toList()));
    lugs.forEach(lug -> other.lugs.add(turned(lug)));
    return other;
  }

  private String turned(String frame) {
    int at = frame.indexOf('C');
    int column = rowsOf.size() + 1 - Integer.parseInt(frame.substring(at + 1));
    return frame.substring(0, at + 1) + column;
  }

  private void addColumn(int column, int start, int rows) {
    rowsOf.add(rows);
    startOf.add(start);
    for (int row = 1; row <= rows; row++) {
      frames.add(name(row, column));
      if (row > 1) {
        joints.add(List.of(name(row - 1, column), name(row, column)));
      }
    }
  }

  private static String name(int row, int column) {
    return "A.R" + row + "C" + column;
  }

  /** Frames of neighbouring columns that lie side by side. */
  List<List<String>> beside() {
    List<List<String>> pairs = new ArrayList<>();
    for (int column = 2; column <= rowsOf.size(); column++) {
      int left = startOf.get(column - 2);
      int right = startOf.get(column - 1);
      for (int row = 1; row <= rowsOf.get(column - 2); row++) {
        int other = row + left - right;
        if (other >= 1 && other <= rowsOf.get(column - 1)) {
          pairs.add(List.of(name(row, column - 1), name(other, column)));
        }
      }
    }
    return pairs;
  }

  BondGraph graph() {
    Layout layout = layout();
    return BondGraph.of(layout, layout.job().bonding().orElseThrow());
  }

  private Layout layout() {
    Problems problems = new Problems();
    Job job = JobReader.read("job.yaml", text(), problems).orElseThrow();
    Layout layout =
        new LayoutBuilder(LimitsReader.read()).build(job, CatalogueReader.empty(), problems);
    if (!problems.sorted().isEmpty()) {
      throw new AssertionError(problems.sorted());
    }
    return layout;
  }

  private String text() {
    return """
        job: columns
        panels:
          sheet: {kind: standing-seam, pitch: 16 in}
        planes:
          south: {panel: sheet, size: 40 m x 14 m, seams: {first: 8 in}}
        modules:
          M: {length: 1722 mm, width: 1134 mm, clamp-zones: [{side: long, zone: 0 mm to 430 mm}]}
        parts:
          mid-clamps:
            MC: {bonding: yes}
          jumpers:
            BJ: {bonding: yes}
          lugs:
            LG: {bonding: yes}
        fields:
          A:
            plane: south
            module: M
            orientation: landscape
            mid-clamp: MC
            gap: 12 mm
            attach: {per-edge: 2}
            columns: [%s]
        bonding:
          jumper: BJ
          lug: LG
          lugs: [%s]
          jumpers: [%s]
        """
        .formatted(columns(), lugTexts(), jumperTexts());
  }

  private String columns() {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < rowsOf.size(); i++) {
      double alongM = 1 + i * (ALONG_M + GAP_M);
      double upM = 1 + startOf.get(i) * (UP_M + GAP_M);
      all.add(
          String.format(
              Locale.ROOT, "{at: [%.3f m, %.3f m], modules: %d}", alongM, upM, rowsOf.get(i)));
    }
    return String.join(", ", all);
  }

  private String lugTexts() {
    return String.join(", ", lugs.stream().map(lug -> "{on: " + lug + "}").toList());
  }

  private String jumperTexts() {
    return String.join(
        ", ",
        joints.stream()
            .filter(pair -> !column(pair.get(0)).equals(column(pair.get(1))))
            .map(pair -> "{from: " + pair.get(0) + ", to: " + pair.get(1) + "}")
            .toList());
  }

  private static String column(String frame) {
    return frame.substring(frame.indexOf('C'));
  }
}

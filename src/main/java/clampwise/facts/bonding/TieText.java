package clampwise.facts.bonding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Names jumpers in few words. */
final class TieText {

  /** Jumpers that are all named; of longer rows that run on regularly only the ends are. */
  private static final int FEW = 4;

  /** Jumpers or rows of jumpers that are named at most. */
  private static final int MOST = 12;

  private TieText() {}

  /** The jumpers, in their order. */
  static String of(List<Tie> ties) {
    List<List<Tie>> rows = rows(ties);
    String named = rows.stream().limit(MOST).map(TieText::row).collect(Collectors.joining(", "));
    int others = rows.stream().skip(MOST).mapToInt(List::size).sum();
    return others == 0 ? named : named + " and " + others + " more like them";
  }

  /** Whether each goes on in the row and column where the one before it ends. */
  static boolean isChain(List<Tie> ties) {
    for (int i = 1; i < ties.size(); i++) {
      if (!ties.get(i - 1).leadsTo(ties.get(i))) {
        return false;
      }
    }
    return true;
  }

  private static String row(List<Tie> row) {
    return row.size() > FEW
        ? row.get(0) + ", " + row.get(1) + ", ... " + row.get(row.size() - 1)
        : row.stream().map(Tie::toString).collect(Collectors.joining(", "));
  }

  /** Cuts the list where a jumper does not follow in the same step along the same row. */
  private static List<List<Tie>> rows(List<Tie> ties) {
    List<List<Tie>> rows = new ArrayList<>();
    for (Tie tie : ties) {
      List<Tie> row = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
      if (row.isEmpty() || !follows(row, tie)) {
        row = new ArrayList<>();
        rows.add(row);
      }
      row.add(tie);
    }
    return rows.stream().flatMap(TieText::shown).toList();
  }

  /** A short row is its jumpers, one by one. */
  private static Stream<List<Tie>> shown(List<Tie> row) {
    return row.size() > FEW ? Stream.of(row) : row.stream().map(List::of);
  }

  private static boolean follows(List<Tie> row, Tie tie) {
    Tie last = row.get(row.size() - 1);
    boolean sameStep =
        row.size() == 1 || row.get(row.size() - 2).columnsTo(last) == last.columnsTo(tie);
    return last.isLike(tie) && last.columnsTo(tie) > 0 && sameStep;
  }
}

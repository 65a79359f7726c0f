package clampwise.proof;

import java.util.List;
import java.util.Map;

/** The page of the proof, written from a matrix. */
final class ProofPage {
  private static final String HEAD =
      """
      # Planted defects, and what finds them

      Written by a test from %d seeded runs (seed %d) with %d planted defects. A run draws a job in which nothing is wrong, plants one to four defects
      at random places, and reviews it. Each defect has to be found by its rule, at the line where it stands, about the part that it spoils; and no other error may
      appear than those that the defect is said to bring with it (`also` in its entry).

      Jobs are drawn by `clampwise.proof.CleanJob` from the files in `src/test/resources/clampwise/proof/jobs`; defects stand in `src/test/resources/clampwise/proof/defects`,
      one entry each. A longer run, with another seed:

      ```
      mvn -Pquick test -Dtest=MatrixTest -Dproof.runs=20000 -Dproof.seed=7
      ```

      This page is written anew with `mvn -Pquick test -Dtest=MatrixTest -Dupdate.docs`.

      ## Kinds of jobs

      | | kind | runs | errors without a defect |
      |---|---|---|---|
      """;

  private final DefectBook book;
  private final Tally tally;
  private final StringBuilder text = new StringBuilder();

  ProofPage(DefectBook book, Tally tally) {
    this.book = book;
    this.tally = tally;
  }

  String text(int runs, long seed) {
    text.append(HEAD.formatted(runs, seed, tally.planted()));
    int number = 1;
    for (JobKind kind : JobKind.ALL) {
      List<Object> cells = List.of(number++, kind.name(), tally.runs(kind), tally.others(kind));
      row(cells.stream().map(Object::toString).toList());
    }
    table();
    without();
    return text.toString();
  }

  private void table() {
    text.append("\n## Found of planted\n\n| rule | all |");
    int kinds = JobKind.ALL.size();
    for (int i = 1; i <= kinds; i++) {
      text.append(' ').append(i).append(" |");
    }
    text.append("\n|---|---|").append("---|".repeat(kinds)).append('\n');
    tally.byRule().forEach(this::rule);
  }

  private void rule(String rule, Map<JobKind, Tally.Count> counts) {
    Tally.Count all = counts.values().stream().reduce(Tally.Count.NONE, Tally.Count::plus);
    text.append("| [").append(rule).append("](rules/").append(rule).append(".md) | ");
    text.append(cell(all)).append(" |");
    for (JobKind kind : JobKind.ALL) {
      text.append(' ').append(cell(counts.getOrDefault(kind, Tally.Count.NONE))).append(" |");
    }
    text.append('\n');
  }

  private static String cell(Tally.Count count) {
    return count.planted() == 0 ? "" : count.found() + "/" + count.planted();
  }

  private void without() {
    text.append("\n## Rules for which nothing is planted\n\n");
    book.without().forEach((rule, reason) -> row(List.of(rule, reason)));
  }

  private void row(List<String> cells) {
    text.append("| ").append(String.join(" | ", cells)).append(" |\n");
  }
}

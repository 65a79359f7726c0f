package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Count;
import clampwise.job.Field;
import clampwise.job.Field.Block;
import clampwise.job.Field.Column;
import clampwise.job.Named;
import clampwise.job.Text;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Lists the columns of a field: those of its block, then its free columns. */
final class ColumnPlans {

  private static final long MOST_MODULES = 1_000_000;

  private final Named.Item<Field> field;
  private final double stepM;
  private final Problems problems;
  private final List<ColumnPlan> plans = new ArrayList<>();

  /**
   * Columns of a field.
   *
   * @param stepM from the left side of a column to the left side of the next [m]
   */
  ColumnPlans(Named.Item<Field> field, double stepM, Problems problems) {
    this.field = field;
    this.stepM = stepM;
    this.problems = problems;
  }

  List<ColumnPlan> all() {
    Field written = field.value();
    if (written.block().isEmpty() && written.columns().isEmpty()) {
      problems.add(Problem.of(field.name().at(), "a field without modules", "a block, or columns"));
    }
    if (fits(written)) {
      written.block().ifPresent(this::addBlock);
      written.columns().forEach(this::addColumn);
      reportEmpty();
    }
    return List.copyOf(plans);
  }

  private void reportEmpty() {
    boolean empty = plans.stream().allMatch(plan -> plan.empty().size() == plan.places());
    if (empty && !plans.isEmpty()) {
      problems.add(
          Problem.of(field.name().at(), "a field with every module left out", "a module in it"));
    }
  }

  private boolean fits(Field written) {
    long inBlock =
        written.block().map(b -> (long) b.rows().value() * b.columns().value()).orElse(0L);
    long free =
        written.columns().stream().map(c -> (long) c.modules().value()).reduce(0L, Long::sum);
    if (inBlock + free > MOST_MODULES) {
      problems.add(
          Problem.of(
              field.name().at(),
              inBlock + free + " modules in one field",
              "at most " + MOST_MODULES));
      return false;
    }
    return true;
  }

  private void addBlock(Block block) {
    Set<String> places = places(block);
    Set<String> empty = block.omit().stream().map(this::place).collect(Collectors.toSet());
    block.omit().stream().filter(o -> !places.contains(place(o))).forEach(o -> noPlace(o, places));
    for (int c = 1; c <= block.columns().value(); c++) {
      int column = c;
      Set<Integer> rows =
          rows(block)
              .filter(row -> empty.contains(placeName(row, column)))
              .boxed()
              .collect(Collectors.toSet());
      double leftM = Snap.m(block.at().along().m() + (c - 1) * stepM);
      double bottomM = block.at().up().m();
      plans.add(new ColumnPlan(c, leftM, bottomM, block.rows().value(), rows, block.at().at()));
    }
  }

  private static Set<String> places(Block block) {
    if (block.omit().isEmpty()) {
      return Set.of();
    }
    return IntStream.rangeClosed(1, block.columns().value())
        .boxed()
        .flatMap(column -> rows(block).mapToObj(row -> placeName(row, column)))
        .collect(Collectors.toSet());
  }

  private static IntStream rows(Block block) {
    return IntStream.rangeClosed(1, block.rows().value());
  }

  /** Place within the field; the field's own name before it may be written too. */
  private String place(Text name) {
    return PlaceName.within(field.name().value(), name.value());
  }

  private static String placeName(int row, int column) {
    return PlaceName.of(row, column);
  }

  private void noPlace(Text omitted, Set<String> places) {
    problems.add(
        new Problem(
            omitted.at(),
            omitted + ", which is no place of this block",
            "a place such as R2C3",
            Nearest.to(place(omitted), places)));
  }

  private void addColumn(Column column) {
    if (column.modules().value() == 0) {
      problems.add(Problem.of(column.modules().at(), "a column of 0 modules", "1 or more"));
    }
    Optional<ColumnPlan> before =
        plans.isEmpty() ? Optional.empty() : Optional.of(plans.get(plans.size() - 1));
    if (column.at().isEmpty() && before.isEmpty()) {
      problems.add(
          Problem.of(column.modules().at(), "a first column without a place", "at: [along, up]"));
      return;
    }
    double leftM =
        column
            .at()
            .map(at -> at.along().m())
            .orElseGet(() -> Snap.m(before.orElseThrow().leftM() + stepM));
    double bottomM =
        column.at().map(at -> at.up().m()).orElseGet(() -> before.orElseThrow().bottomM());
    plans.add(
        new ColumnPlan(
            plans.size() + 1,
            leftM,
            bottomM,
            column.modules().value(),
            empty(column),
            column.at().map(at -> at.at()).orElse(column.modules().at())));
  }

  private Set<Integer> empty(Column column) {
    Set<Integer> empty = new HashSet<>();
    for (Count place : column.omit()) {
      if (place.value() < 1 || place.value() > column.modules().value()) {
        problems.add(
            Problem.of(
                place.at(),
                "place " + place.value() + " of a column of " + column.modules().value(),
                "a place counted from below"));
      }
      empty.add(place.value());
    }
    return empty;
  }
}

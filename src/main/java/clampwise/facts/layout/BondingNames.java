package clampwise.facts.layout;

import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import clampwise.job.Bonding.Lug;
import clampwise.job.Count;
import clampwise.job.Text;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reports modules that the bonding names but the layout does not have. */
public final class BondingNames {

  private BondingNames() {}

  /** Adds a problem for each name of a module or row that is not there. */
  public static void check(Layout layout, Problems problems) {
    problems(layout).forEach(problems::add);
  }

  /** The problems of names in the bonding. */
  public static List<Problem> problems(Layout layout) {
    return layout
        .job()
        .bonding()
        .map(bonding -> Stream.concat(rows(layout, bonding), modules(layout, bonding)).toList())
        .orElse(List.of());
  }

  private static Stream<Problem> modules(Layout layout, Bonding bonding) {
    List<Text> written = modules(bonding);
    if (written.isEmpty()) {
      return Stream.empty();
    }
    Set<String> placed =
        layout.fields().stream()
            .flatMap(field -> field.modules().stream())
            .map(PlacedModule::name)
            .collect(Collectors.toSet());
    return written.stream()
        .filter(name -> !placed.contains(name.value()))
        .filter(name -> isReadable(layout, name))
        .map(name -> unknown(name, placed));
  }

  private static Stream<Problem> rows(Layout layout, Bonding bonding) {
    return bonding.jumpers().stream()
        .flatMap(
            jumper ->
                layout.fields().stream()
                    .filter(field -> isOf(jumper, field))
                    .filter(field -> jumper.row().filter(r -> r.value() > rows(field)).isPresent())
                    .map(field -> noRow(field, jumper.row().orElseThrow())));
  }

  private static boolean isOf(Jumper jumper, FieldLayout field) {
    return jumper.field().filter(name -> name.value().equals(field.name())).isPresent();
  }

  private static int rows(FieldLayout field) {
    return field.modules().stream().mapToInt(PlacedModule::row).max().orElse(0);
  }

  private static Problem noRow(FieldLayout field, Count row) {
    return Problem.of(
        row.at(),
        "row " + row.value() + "; field " + field.name() + " has " + rows(field) + " rows",
        "a row from 1 to " + rows(field));
  }

  private static List<Text> modules(Bonding bonding) {
    Stream<Text> jumpers =
        bonding.jumpers().stream()
            .flatMap(jumper -> Stream.of(jumper.from(), jumper.to()).flatMap(Optional::stream));
    return Stream.concat(jumpers, bonding.lugs().stream().map(Lug::on)).toList();
  }

  /** What a field that is not laid out as written lacks has been reported with that field. */
  private static boolean isReadable(Layout layout, Text name) {
    return layout.incomplete().stream().noneMatch(field -> name.value().startsWith(field + "."));
  }

  private static Problem unknown(Text name, Set<String> placed) {
    return new Problem(
        name.at(),
        name + ", which is no module of the layout",
        "the name of a placed module, such as A.R1C1",
        nearest(name.value(), placed));
  }

  /** A name without its field is that of the only field that has such a place. */
  private static Optional<String> nearest(String name, Set<String> placed) {
    List<String> within = placed.stream().filter(one -> one.endsWith("." + name)).toList();
    return within.size() == 1
        ? Optional.of(within.get(0))
        : Nearest.to(name, placed.stream().sorted().toList());
  }
}

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

  /** Adds a problem for each name of a module that is not placed. */
  public static void check(Layout layout, Problems problems) {
    layout.job().bonding().ifPresent(bonding -> checkRows(layout, bonding, problems));
    List<Text> written = layout.job().bonding().map(BondingNames::modules).orElse(List.of());
    if (written.isEmpty()) {
      return;
    }
    Set<String> placed =
        layout.fields().stream()
            .flatMap(field -> field.modules().stream())
            .map(PlacedModule::name)
            .collect(Collectors.toSet());
    written.stream()
        .filter(name -> !placed.contains(name.value()))
        .filter(name -> isReadable(layout, name))
        .forEach(name -> problems.add(unknown(name, placed)));
  }

  private static void checkRows(Layout layout, Bonding bonding, Problems problems) {
    for (Jumper jumper : bonding.jumpers()) {
      layout.fields().stream()
          .filter(field -> jumper.field().filter(n -> n.value().equals(field.name())).isPresent())
          .filter(field -> jumper.row().filter(row -> row.value() > rows(field)).isPresent())
          .forEach(field -> problems.add(noRow(field, jumper.row().orElseThrow())));
    }
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
        Nearest.to(name.value(), placed.stream().sorted().toList()));
  }
}

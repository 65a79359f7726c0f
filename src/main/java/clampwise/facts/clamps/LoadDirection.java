package clampwise.facts.clamps;

import clampwise.job.Field.DesignLoad;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.Quantity.Pressure;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** The two directions a module is loaded in. */
enum LoadDirection {
  DOWN(ClampZone::down, DesignLoad::down),
  UP(ClampZone::up, DesignLoad::up);

  private final Function<ClampZone, Optional<Pressure>> rated;
  private final Function<DesignLoad, Optional<Pressure>> wanted;

  LoadDirection(
      Function<ClampZone, Optional<Pressure>> rated,
      Function<DesignLoad, Optional<Pressure>> wanted) {
    this.rated = rated;
    this.wanted = wanted;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  Optional<Pressure> wanted(DesignLoad load) {
    return wanted.apply(load);
  }

  /** The highest load of some rows, as the table has it. */
  Optional<Pressure> best(List<ClampZone> rows) {
    return rows.stream()
        .flatMap(row -> rated.apply(row).stream())
        .reduce((a, b) -> b.pa() > a.pa() ? b : a);
  }
}

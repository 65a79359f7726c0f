package clampwise.catalogue;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.trail.Source;
import clampwise.calc.wind.PanelLimits;
import clampwise.calc.wind.PanelLimits.Bound;
import clampwise.calc.wind.WindChoices;
import clampwise.calc.wind.WindCode;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The wind standard with the tables and limits that ship with the program. */
public final class WindCodes {

  private static final String TABLES = "asce-wind.yaml";

  private WindCodes() {}

  /** An edition with what stands when nothing is chosen. */
  public static WindCode read(AsceEdition edition, Limits limits) {
    return of(edition, TablesReader.read(TABLES), limits);
  }

  /** All editions, over tables that are read once. */
  public static Map<AsceEdition, WindCode> readAll(Limits limits) {
    Tables tables = TablesReader.read(TABLES);
    return Stream.of(AsceEdition.values())
        .collect(Collectors.toMap(edition -> edition, edition -> of(edition, tables, limits)));
  }

  /** An edition over tables that are already read. */
  public static WindCode of(AsceEdition edition, Tables tables, Limits limits) {
    return new WindCode(
        new EditionTables(edition, tables.byKey()), panels(limits), WindChoices.usual());
  }

  private static PanelLimits panels(Limits limits) {
    return new PanelLimits(
        bound(limits, "array-height-most"),
        bound(limits, "array-tilt-most"),
        bound(limits, "module-gap-least"),
        bound(limits, "array-gap-spacing-most"),
        bound(limits, "array-edge-distance-heights"));
  }

  private static Bound bound(Limits limits, String key) {
    Limit limit = limits.get(key);
    return new Bound(
        limit.si(),
        new Source(
            limit.document(), limit.edition(), limit.clause(), limit.obtained(), limit.validity()));
  }
}

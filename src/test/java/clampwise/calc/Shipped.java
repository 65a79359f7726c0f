package clampwise.calc;

import clampwise.calc.en.EnTables;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;

/** The tables that ship with the program, for tests. */
public final class Shipped {

  private Shipped() {}

  public static EditionTables snow(AsceEdition edition) {
    return new EditionTables(edition, TablesReader.read("asce-snow.yaml").byKey());
  }

  public static EditionTables windTables(AsceEdition edition) {
    return new EditionTables(edition, TablesReader.read("asce-wind.yaml").byKey());
  }

  public static EditionTables combinations(AsceEdition edition) {
    return new EditionTables(edition, TablesReader.read("combinations.yaml").byKey());
  }

  public static EnTables enWind() {
    return EnTables.of(TablesReader.read("en-wind.yaml").byKey());
  }

  public static EnTables enSnow() {
    return EnTables.of(TablesReader.read("en-snow.yaml").byKey());
  }

  /** Work that nobody reads. */
  public static Work work() {
    return new Work(Measure.IMPERIAL);
  }
}

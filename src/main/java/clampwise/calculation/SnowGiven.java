package clampwise.calculation;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.snow.Risk;
import clampwise.calc.snow.SlopeFactor;
import clampwise.calc.snow.SnowBasis;
import clampwise.calc.snow.ThermalFactor;
import clampwise.calc.trail.Work;
import clampwise.catalogue.TablesReader;
import clampwise.units.Dimension;
import java.util.Optional;

/** Inputs that the snow calculations share, and what they mean. */
record SnowGiven(Given given, Work work) {

  private static final double MOST_SNOW_PA = 50_000;

  static Input edition() {
    return WindInputs.EDITION;
  }

  static Input ground() {
    return Input.of(
        "ground-snow", "ground snow load of the edition", Dimension.PRESSURE, 0.0, MOST_SNOW_PA);
  }

  static Input risk() {
    return Input.word("risk-category", "risk category", "I", "II", "III", "IV");
  }

  static Input winterWind() {
    return Input.of("winter-wind", "winter wind parameter W2 of 7-22", Dimension.NUMBER, 0.0, 1.0)
        .orNothing();
  }

  static Input slope() {
    return Input.of("slope", "slope of the roof", Dimension.ANGLE, 0.0, Math.PI / 2);
  }

  static Input thermal() {
    return Input.of("thermal-factor", "thermal factor Ct", Dimension.NUMBER, 0.5, 1.5);
  }

  static Input exposure() {
    return Input.of("exposure-factor", "exposure factor Ce", Dimension.NUMBER, 0.5, 1.5);
  }

  static Input resistance() {
    return Input.of(
            "resistance", "thermal resistance R in ft²·h·°F/Btu", Dimension.NUMBER, 0.0, 500.0)
        .orNothing();
  }

  static Input length(String name, String meaning) {
    return Input.of(name, meaning, Dimension.LENGTH, 0.0, 1000.0);
  }

  static Input pressure(String name, String meaning) {
    return Input.of(name, meaning, Dimension.PRESSURE, 0.0, MOST_SNOW_PA);
  }

  static Input slippery() {
    return Words.yesNo("slippery", "slippery surface: bare or painted metal, glass");
  }

  static Input obstructed() {
    return Words.yesNo(
            "obstructed",
            "something holds the snow, such as guards or the array, or no space below the eave")
        .unless("yes");
  }

  static Input ventilated() {
    return Words.yesNo("ventilated", "the roof is ventilated").unless("no");
  }

  EditionTables tables() {
    AsceEdition edition = Words.choice(AsceEdition.class, given.word("edition"));
    return new EditionTables(edition, TablesReader.read("asce-snow.yaml").byKey());
  }

  SnowBasis basis() {
    Optional<Double> winterWind = given.find("winter-wind");
    return SnowBasis.of(tables(), number("ground-snow"), risk(given), winterWind, work);
  }

  SlopeFactor.Surface surface() {
    return new SlopeFactor.Surface(
        is("slippery"), is("obstructed"), given.find("resistance"), is("ventilated"));
  }

  ThermalFactor.Warmth warmth() {
    return new ThermalFactor.Warmth(
        Words.choice(ThermalFactor.Condition.class, given.word("condition")),
        given.find("resistance"));
  }

  double number(String name) {
    return given.number(name);
  }

  boolean is(String name) {
    return given.word(name).equals("yes");
  }

  private static Risk risk(Given given) {
    return Risk.valueOf(given.word("risk-category"));
  }
}

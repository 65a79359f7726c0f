package clampwise.catalogue;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.en.EnTables;
import clampwise.calc.trail.Table;
import clampwise.calc.wind.WindCode;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/** Tables of the codes that ship with the program, each file read when it is first asked for. */
public final class CodeTables {

  private final Map<String, Tables> files;
  private final UnaryOperator<Limits> house;

  /** The tables as they ship. */
  public CodeTables() {
    this(new ConcurrentHashMap<>(), limits -> limits);
  }

  private CodeTables(Map<String, Tables> files, UnaryOperator<Limits> house) {
    this.files = files;
    this.house = house;
  }

  /**
   * The same tables for a house that has limits of its own.
   *
   * @param own puts them in place of shipped ones
   */
  public CodeTables with(UnaryOperator<Limits> own) {
    return new CodeTables(files, own);
  }

  /** The wind standard with what stands when nothing is chosen. */
  public WindCode wind(AsceEdition edition, Limits limits) {
    return WindCodes.of(edition, file("asce-wind.yaml"), limits);
  }

  /** Tables of the wind standard in an edition. */
  public EditionTables windTables(AsceEdition edition) {
    return new EditionTables(edition, file("asce-wind.yaml").byKey());
  }

  /** Snow of an edition. */
  public EditionTables snow(AsceEdition edition) {
    return new EditionTables(edition, file("asce-snow.yaml").byKey());
  }

  /** Load combinations of an edition. */
  public EditionTables combinations(AsceEdition edition) {
    return new EditionTables(edition, file("combinations.yaml").byKey());
  }

  /** Wind of EN 1991-1-4, with the severe reading where sources disagree. */
  public EnTables windOfEn() {
    return windOfEn(EnTables.Reading.SEVERE);
  }

  /** Wind of EN 1991-1-4 with one reading of the rows about which sources disagree. */
  public EnTables windOfEn(EnTables.Reading reading) {
    return new EnTables(file("en-wind.yaml").byKey(), reading);
  }

  /** Snow of EN 1991-1-3. */
  public EnTables snowOfEn() {
    return EnTables.of(file("en-snow.yaml").byKey());
  }

  /** Recommended partial and combination factors of EN 1990. */
  public Table factorsOfEn() {
    return file("combinations.yaml").get("en-factors");
  }

  /** What fire codes ask for, by rule set. */
  public Limits fire() {
    return house.apply(LimitsReader.fire());
  }

  /** What a take-off assumes where a job does not say it. */
  public Limits takeoff() {
    return house.apply(LimitsReader.takeoff());
  }

  /** All tables of a file of the shared data. */
  public Tables file(String name) {
    return files.computeIfAbsent(name, TablesReader::read);
  }
}

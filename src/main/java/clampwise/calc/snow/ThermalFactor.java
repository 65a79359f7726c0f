package clampwise.calc.snow;

import clampwise.calc.EditionTables;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/** How far the heat of a building melts its snow, ASCE 7 tables 7.3-2 and 7.3-3. */
public final class ThermalFactor {

  private ThermalFactor() {}

  /** How warm the roof is kept. */
  public enum Condition {
    HEATED("heated"),
    ABOVE_FREEZING("above-freezing"),
    COLD_VENTILATED("cold-ventilated"),
    UNHEATED("unheated"),
    FREEZER("freezer"),
    GREENHOUSE("greenhouse");

    private final String row;

    Condition(String row) {
      this.row = row;
    }
  }

  /**
   * A roof between inside and outside.
   *
   * @param condition how warm it is kept
   * @param resistance its thermal resistance R [ft²·h·°F/Btu], if known
   */
  public record Warmth(Condition condition, Optional<Double> resistance) {}

  /**
   * Thermal factor Ct (ASCE 7-16 table 7.3-2; ASCE 7-22 tables 7.3-2 and 7.3-3, where heated roofs
   * without ventilation depend on ground snow and thermal resistance; second-hand). Where the
   * thermal resistance decides and is not known, the larger factor stands and the line says so.
   *
   * @param tables tables of the edition
   * @param roof how warm it is kept
   * @param groundPa ground snow load [Pa]
   * @param work takes the lines
   * @return Ct [-]
   */
  public static double of(EditionTables tables, Warmth roof, double groundPa, Work work) {
    Optional<Table.Row> row = tables.table("thermal-factor").row("condition", roof.condition.row);
    return row.isPresent()
        ? byCondition(tables, roof, row.get(), work)
        : HeatedRoof.of(tables, roof.resistance, groundPa, work);
  }

  private static double byCondition(EditionTables tables, Warmth roof, Table.Row row, Work work) {
    Optional<Double> above = row.find("resistance-above");
    boolean isWarm = above.isPresent() && roof.resistance.filter(r -> r <= above.get()).isPresent();
    Table.Row valid =
        isWarm ? tables.table("thermal-factor").row("condition", "heated").orElseThrow() : row;
    boolean isAssumed = above.isPresent() && roof.resistance.isEmpty();
    String note = isAssumed ? "thermal resistance not given: taken as above " + above.get() : "";
    return work.write(
        Line.given(
            Term.number("C_t", "thermal factor", valid.number("factor")),
            tables.source("thermal-factor"),
            note));
  }
}

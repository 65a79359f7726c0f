package clampwise.calc.snow;

import clampwise.calc.AsceEdition;
import clampwise.calc.EditionTables;
import clampwise.calc.Outcome;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/**
 * What every snow load of a building rests on.
 *
 * @param tables tables of the edition
 * @param groundPa ground snow load of that edition: 50-year in 7-16, strength level for the risk
 *     category in 7-22 [Pa]
 * @param risk risk category
 * @param importance importance factor Is; 1 in 7-22, which has none [-]
 * @param winterWind winter wind parameter W2 of 7-22, needed for drifts [-]
 */
public record SnowBasis(
    EditionTables tables,
    double groundPa,
    Risk risk,
    double importance,
    Optional<Double> winterWind) {

  /**
   * The basis of an edition: importance factor of 7-16 (table 1.5-2; second-hand), none in 7-22.
   *
   * @param tables tables of the edition
   * @param groundPa ground snow load [Pa], not negative
   * @param risk risk category
   * @param winterWind winter wind parameter W2 of 7-22 [-], if known
   * @param work takes the lines
   * @return the basis
   */
  public static SnowBasis of(
      EditionTables tables, double groundPa, Risk risk, Optional<Double> winterWind, Work work) {
    double importance =
        tables
            .find("importance-factor")
            .map(table -> table.row("risk", risk.name()).orElseThrow().number("factor"))
            .map(factor -> work.given(importance(factor), tables.source("importance-factor")))
            .orElse(1.0);
    return new SnowBasis(tables, groundPa, risk, importance, winterWind);
  }

  /** Whether the edition has an importance factor for snow. */
  boolean hasImportance() {
    return tables.find("importance-factor").isPresent();
  }

  AsceEdition edition() {
    return tables.edition();
  }

  Term ground() {
    return Term.pressure("p_g", "ground snow load", groundPa);
  }

  Term importanceTerm() {
    return importance(importance);
  }

  /** The ground snow load with its importance factor, as a product in a formula. */
  String groundFormula() {
    return hasImportance() ? "I_s*p_g" : "p_g";
  }

  /** Inputs of {@link #groundFormula}, followed by others. */
  Term[] groundAnd(Term... others) {
    int own = hasImportance() ? 2 : 1;
    Term[] all = new Term[own + others.length];
    all[0] = ground();
    all[own - 1] = hasImportance() ? importanceTerm() : ground();
    System.arraycopy(others, 0, all, own, others.length);
    return all;
  }

  /** Why a drift cannot be computed, if it cannot. */
  Optional<Outcome.NotApplicable<Double>> missing() {
    boolean isMissing = edition() == AsceEdition.ASCE_7_22 && winterWind.isEmpty();
    return isMissing
        ? Optional.of(
            new Outcome.NotApplicable<>(
                "drifts of 7-22 need the winter wind parameter W2 (winter-wind)"))
        : Optional.empty();
  }

  private static Term importance(double factor) {
    return Term.number("I_s", "importance factor for snow", factor);
  }
}

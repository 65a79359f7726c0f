package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.statics.LimitState.Asd;
import clampwise.calc.statics.LimitState.Lrfd;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/**
 * A load that the data of a part state, and what it means.
 *
 * @param loadN load as stated [N]
 * @param meaning what the number stands for
 * @param factor safety factor Ω of an ultimate load for ASD, resistance factor φ for LRFD
 */
public record TestedLoad(double loadN, Meaning meaning, Optional<Double> factor) {

  /** What the number stands for. */
  public enum Meaning {
    /** May be held against service loads as it is. */
    ALLOWABLE,
    /** At failure in the test. */
    ULTIMATE,
    /** May be held against factored loads as it is. */
    DESIGN
  }

  private static final Source PART =
      Source.of("part-sheet", "tested load", "as entered in the job or the catalogue");

  /**
   * The allowable load: as stated, or the ultimate load over the safety factor, R = T/Ω.
   *
   * <p>Not applicable to a design strength, which belongs to factored loads, and to an ultimate
   * load without a safety factor.
   *
   * @param direction letters for the symbol, such as {@code up}
   */
  public Outcome<Strength<Asd>> allowable(String direction, Work work) {
    return switch (meaning) {
      case ALLOWABLE -> new Outcome.Result<>(new Strength<>(stated(direction, work)));
      case ULTIMATE ->
          factor.isPresent()
              ? new Outcome.Result<>(new Strength<>(divided(direction, factor.get(), work)))
              : new Outcome.NotApplicable<>(
                  "an ultimate load needs a safety factor (safety-factor)");
      case DESIGN ->
          new Outcome.NotApplicable<>(
              "a design strength (LRFD) may not be held against service loads (ASD)");
    };
  }

  /**
   * The design strength: as stated, or the ultimate load times the resistance factor, R = φ T.
   *
   * <p>Not applicable to an allowable load, which belongs to service loads, and to an ultimate load
   * without a resistance factor.
   *
   * @param direction letters for the symbol, such as {@code up}
   */
  public Outcome<Strength<Lrfd>> design(String direction, Work work) {
    return switch (meaning) {
      case DESIGN -> new Outcome.Result<>(new Strength<>(stated(direction, work)));
      case ULTIMATE ->
          factor.isPresent()
              ? new Outcome.Result<>(new Strength<>(times(direction, factor.get(), work)))
              : new Outcome.NotApplicable<>("an ultimate load needs a resistance factor");
      case ALLOWABLE ->
          new Outcome.NotApplicable<>(
              "an allowable load (ASD) may not be held against factored loads (LRFD)");
    };
  }

  private double stated(String direction, Work work) {
    return work.given(Term.force("R_" + direction, "strength, " + direction, loadN), PART);
  }

  private double divided(String direction, double omega, Work work) {
    return work.write(
        Term.force("R_" + direction, "allowable load, " + direction, loadN / omega),
        "T_" + direction + "/Omega",
        PART,
        tested(direction),
        Term.number("Omega", "safety factor", omega));
  }

  private double times(String direction, double phi, Work work) {
    return work.write(
        Term.force("R_" + direction, "design strength, " + direction, loadN * phi),
        "phi*T_" + direction,
        PART,
        Term.number("phi", "resistance factor", phi),
        tested(direction));
  }

  private Term tested(String direction) {
    return Term.force("T_" + direction, "ultimate load, " + direction, loadN);
  }
}

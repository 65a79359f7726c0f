package clampwise.calc.combination;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Optional;

/**
 * Partial and combination factors of EN 1990.
 *
 * @param deadUnfavourable gamma of dead load where it adds [-]
 * @param deadFavourable gamma of dead load where it helps [-]
 * @param variable gamma of snow, wind and imposed load [-]
 * @param psiSnow psi 0 of snow [-]
 * @param psiWind psi 0 of wind [-]
 */
public record PartialFactors(
    double deadUnfavourable,
    double deadFavourable,
    double variable,
    double psiSnow,
    double psiWind) {

  /**
   * What the job or its national annex gives.
   *
   * @param deadUnfavourable gamma of dead load where it adds [-]
   * @param deadFavourable gamma of dead load where it helps [-]
   * @param variable gamma of variable actions [-]
   * @param psiSnow psi 0 of snow [-]
   * @param psiWind psi 0 of wind [-]
   */
  public record Given(
      Optional<Double> deadUnfavourable,
      Optional<Double> deadFavourable,
      Optional<Double> variable,
      Optional<Double> psiSnow,
      Optional<Double> psiWind) {

    /** Nothing given. */
    public static Given nothing() {
      return new Given(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  /**
   * The job's factors, and the recommended values of EN 1990 (annex A1; from memory) where it gives
   * none; the lines say which are assumed.
   *
   * @param recommended table of recommended values
   * @param given what the job gives
   * @param work takes the lines
   * @return the factors
   */
  public static PartialFactors of(Table recommended, Given given, Work work) {
    Reader reader = new Reader(recommended, work);
    return new PartialFactors(
        reader.read("gamma_G_sup", "dead-unfavourable", given.deadUnfavourable),
        reader.read("gamma_G_inf", "dead-favourable", given.deadFavourable),
        reader.read("gamma_Q", "variable", given.variable),
        reader.read("psi_0_s", "psi-snow", given.psiSnow),
        reader.read("psi_0_w", "psi-wind", given.psiWind));
  }

  private record Reader(Table recommended, Work work) {

    double read(String symbol, String name, Optional<Double> given) {
      double value =
          given.orElseGet(() -> recommended.row("name", name).orElseThrow().number("value"));
      String note = given.isPresent() ? "given" : "assumption: recommended value, none given";
      String meaning = "factor, " + name.replace('-', ' ');
      return work.write(
          Line.given(Term.number(symbol, meaning, value), recommended.source(), note));
    }
  }
}

package clampwise.calc.snow;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Snow on one slope of a roof, in all its load cases.
 *
 * @param flatPa flat roof snow load pf [Pa]
 * @param slopeFactor Cs [-]
 * @param balancedPa balanced load ps, without rain [Pa]
 * @param densityNm3 density of the snow [N/m³]
 * @param cases the load cases of this slope, on the horizontal projection
 * @param missing why a case that is due could not be computed, if so
 */
public record RoofSnow(
    double flatPa,
    double slopeFactor,
    double balancedPa,
    double densityNm3,
    List<SnowCase> cases,
    Optional<String> missing) {

  public RoofSnow {
    cases = List.copyOf(cases);
  }

  /** Shape of a roof, as the snow provisions sort it. */
  public enum Shape {
    /** Gable or hip: has a ridge over which snow drifts. */
    RIDGED,
    MONOSLOPE,
    FLAT
  }

  /**
   * A roof slope.
   *
   * @param shape shape of the roof
   * @param slopeRad slope, 0 to a right angle [rad]
   * @param eaveToRidgeM plan distance from eave to ridge, or to the high side [m]
   * @param simpleRafters whether simple members run from eave to ridge
   * @param surface what the snow would slide on
   */
  public record Roof(
      Shape shape,
      double slopeRad,
      double eaveToRidgeM,
      boolean simpleRafters,
      SlopeFactor.Surface surface) {}

  /**
   * Exposure and thermal factor.
   *
   * @param exposure Ce [-]
   * @param thermal Ct [-]
   */
  public record Factors(double exposure, double thermal) {}

  /**
   * All snow load cases of a slope, ASCE 7-16 and 7-22, 7.3 to 7.6 and 7.10: balanced with rain,
   * minimum, unbalanced. Drifts at steps and sliding snow come on top, see {@link StepDrift} and
   * {@link SlidingSnow}. Snow on an array is a documented assumption: the load of the roof, on the
   * array.
   *
   * @param basis ground snow, importance, winter wind and edition
   * @param roof the slope
   * @param factors Ce and Ct
   * @param work takes the lines
   * @return the cases
   */
  public static RoofSnow of(SnowBasis basis, Roof roof, Factors factors, Work work) {
    double flatPa = FlatRoofSnow.pa(basis, factors.exposure, factors.thermal, work);
    double slopeFactor =
        SlopeFactor.of(basis.tables(), roof.slopeRad, factors.thermal, roof.surface, work);
    double balancedPa = balancedPa(basis, flatPa, slopeFactor, work);
    double densityNm3 = SnowDensity.newtonPerM3(basis, work);
    RoofSnow balanced =
        new RoofSnow(flatPa, slopeFactor, balancedPa, densityNm3, List.of(), Optional.empty());
    return balanced.withCases(basis, roof, work);
  }

  /** The case with the largest load at a plan distance from the ridge. */
  public SnowCase governing(double fromRidgeM) {
    return cases.stream()
        .max(Comparator.comparingDouble(snow -> snow.atPa(fromRidgeM)))
        .orElseThrow();
  }

  /** The largest load at a plan distance from the ridge [Pa], on the horizontal projection. */
  public double largestPa(double fromRidgeM) {
    return governing(fromRidgeM).atPa(fromRidgeM);
  }

  private static double balancedPa(SnowBasis basis, double flatPa, double slopeFactor, Work work) {
    return work.write(
        Term.pressure("p_s", "balanced snow load", slopeFactor * flatPa),
        "C_s*p_f",
        basis.tables().source("slope-panel"),
        Term.number("C_s", "slope factor", slopeFactor),
        Term.pressure("p_f", "snow load of a flat roof", flatPa));
  }

  private RoofSnow withCases(SnowBasis basis, Roof roof, Work work) {
    List<SnowCase> found = new ArrayList<>();
    double rainPa = RainOnSnow.pa(basis, roof.slopeRad, roof.eaveToRidgeM, work);
    String name = rainPa > 0 ? "balanced with rain" : "balanced";
    found.add(
        rainPa > 0
            ? SnowCase.even(name, "p_b", withRainPa(basis, rainPa, work))
            : SnowCase.even(name, "p_s", balancedPa));
    MinimumSnow.pa(basis, roof.slopeRad, work)
        .result()
        .ifPresent(pa -> found.add(SnowCase.even("minimum", "p_m", pa)));
    Optional<String> unknown =
        roof.shape == Shape.RIDGED ? unbalanced(basis, roof, found, work) : Optional.empty();
    return new RoofSnow(flatPa, slopeFactor, balancedPa, densityNm3, found, unknown);
  }

  private double withRainPa(SnowBasis basis, double rainPa, Work work) {
    return work.write(
        Term.pressure("p_b", "balanced snow load with rain", balancedPa + rainPa),
        "p_s+p_r",
        basis.tables().source("rain"),
        Term.pressure("p_s", "balanced snow load", balancedPa),
        Term.pressure("p_r", "rain-on-snow surcharge", rainPa));
  }

  /** Adds the unbalanced case; gives the reason if it is due but an input is missing. */
  private Optional<String> unbalanced(SnowBasis basis, Roof roof, List<SnowCase> found, Work work) {
    UnbalancedSnow.Ridge ridge =
        new UnbalancedSnow.Ridge(
            roof.slopeRad, roof.eaveToRidgeM, roof.simpleRafters, balancedPa, densityNm3);
    Outcome<UnbalancedSnow> outcome = UnbalancedSnow.of(basis, ridge, work);
    outcome
        .result()
        .ifPresent(
            snow -> {
              found.add(SnowCase.even("unbalanced, windward slope", "p_wind", snow.windwardPa()));
              found.add(
                  new SnowCase(
                      "unbalanced, leeward slope",
                      "p_lee",
                      snow.nearRidgePa(),
                      snow.nearRidgeM(),
                      snow.beyondPa()));
            });
    boolean isDue = UnbalancedSnow.hasUnbalanced(basis.tables().row("unbalanced"), roof.slopeRad);
    return isDue && outcome instanceof Outcome.NotApplicable<UnbalancedSnow> missing
        ? Optional.of(missing.reason())
        : Optional.empty();
  }
}

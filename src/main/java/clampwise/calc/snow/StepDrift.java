package clampwise.calc.snow;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Drifts on a lower roof at a step, or at a parapet.
 *
 * @param drifts one for each wind direction that feeds one
 * @param clearHeightM height of the step above the balanced snow [m]
 */
public record StepDrift(List<Drift> drifts, double clearHeightM) {

  /**
   * A triangle of snow against a wall, on top of the balanced load.
   *
   * @param name leeward or windward
   * @param heightM height at the wall [m]
   * @param widthM plan distance from the wall at which it ends [m]
   * @param peakPa load at the wall [Pa]
   */
  public record Drift(String name, double heightM, double widthM, double peakPa) {

    /** Load at a plan distance from the wall [Pa]. */
    public double atPa(double fromWallM) {
      return widthM == 0 ? 0 : peakPa * Math.max(0, 1 - fromWallM / widthM);
    }
  }

  /**
   * A lower roof and what stands above it.
   *
   * @param riseM height hr of the upper roof or parapet above the lower roof [m]
   * @param upperFetchM length of the upper roof, away from the step [m]; none at a parapet
   * @param lowerFetchM length of the lower roof, away from the step [m], if wind may come from
   *     there
   * @param balancedPa balanced load of the lower roof [Pa]
   */
  public record Step(
      double riseM,
      Optional<Double> upperFetchM,
      Optional<Double> lowerFetchM,
      double balancedPa) {}

  /**
   * Drifts at a step (ASCE 7-16 and 7-22, 7.7.1; parapets 7.8; second-hand): leeward hd from the
   * upper roof's length, windward 0.75 hd from the lower roof's. Up to the clear height hc the
   * width is 4 hd; above it the height is hc and the width 4 hd² / hc, at most 8 hc. The windward
   * drift of 7-22 is 8 of its heights wide. No drift where hc / hb is below 0.2.
   *
   * @param basis ground snow, importance, winter wind and edition
   * @param step the roofs
   * @param work takes the lines
   * @return the drifts, or why there are none
   */
  public static Outcome<StepDrift> of(SnowBasis basis, Step step, Work work) {
    if (basis.missing().isPresent()) {
      return new Outcome.NotApplicable<>(basis.missing().get().reason());
    }
    if (basis.groundPa() <= 0 || step.balancedPa <= 0) {
      return new Outcome.NotApplicable<>("no snow, no drift");
    }
    Table.Row row = basis.tables().row("step");
    double densityNm3 = SnowDensity.newtonPerM3(basis, work);
    Wall wall = Wall.of(basis, step, densityNm3, work);
    return wall.clearM() / wall.depthM() < row.number("clear-least") - 1e-9
        ? new Outcome.NotApplicable<>(wall.tooLow())
        : new Outcome.Result<>(drifts(step, wall));
  }

  /** The largest drift load at a plan distance from the wall [Pa]. */
  public double surchargePa(double fromWallM) {
    return drifts.stream().mapToDouble(drift -> drift.atPa(fromWallM)).max().orElse(0);
  }

  private static StepDrift drifts(Step step, Wall wall) {
    List<Drift> drifts = new ArrayList<>();
    step.upperFetchM.ifPresent(fetch -> drifts.add(wall.leeward(fetch)));
    step.lowerFetchM.ifPresent(fetch -> drifts.add(wall.windward(fetch)));
    return new StepDrift(List.copyOf(drifts), wall.clearM());
  }

  private record Wall(SnowBasis basis, double densityNm3, double depthM, double clearM, Work work) {

    static Wall of(SnowBasis basis, Step step, double densityNm3, Work work) {
      Term balanced = Term.pressure("p_s", "balanced load of the lower roof", step.balancedPa);
      Term density = Term.unitWeight("gamma", "density of the snow", densityNm3);
      double depthM =
          work.write(
              Term.length("h_b", "depth of the balanced snow", step.balancedPa / densityNm3),
              "p_s/gamma",
              basis.tables().source("step"),
              balanced,
              density);
      double clearM =
          work.write(
              Term.length("h_c", "clear height above it", step.riseM - depthM),
              "h_r-h_b",
              basis.tables().source("step"),
              Term.length("h_r", "height of the step", step.riseM),
              Term.length("h_b", "depth of the balanced snow", depthM));
      return new Wall(basis, densityNm3, depthM, clearM, work);
    }

    String tooLow() {
      return String.format(
          Locale.ROOT,
          "the step stands %.3f of the balanced depth above it, below 0.2: no drift",
          clearM / depthM);
    }

    Drift leeward(double fetchM) {
      double freeM = heightM(fetchM, "h_lee");
      return drift("leeward", Term.length("h_lee", "height of the drift", freeM), "width");
    }

    Drift windward(double fetchM) {
      double share = row().number("windward");
      double wholeM = heightM(fetchM, "h_d");
      double freeM =
          write(
              Term.length("h_wind", "height of the windward drift", share * wholeM),
              Formulas.number(share) + "*h_d",
              Term.length("h_d", "height of the drift", wholeM));
      return drift(
          "windward",
          Term.length("h_wind", "height of the windward drift", freeM),
          "windward-width");
    }

    private double heightM(double fetchM, String symbol) {
      return DriftHeight.atStepM(basis, fetchM, densityNm3, symbol, work).result().orElseThrow();
    }

    private Drift drift(String name, Term free, String widthColumn) {
      boolean fits = free.si() <= clearM;
      double heightM = fits ? free.si() : clearM;
      double widthM = fits ? freeWidthM(free, widthColumn) : heldWidthM(free, widthColumn);
      double peakPa =
          write(
              Term.pressure("p_d", "load of the drift at the wall", heightM * densityNm3),
              (fits ? free.symbol() : "h_c") + "*gamma",
              fits ? free : clear(),
              Term.unitWeight("gamma", "density of the snow", densityNm3));
      return new Drift(name, heightM, widthM, peakPa);
    }

    private double freeWidthM(Term free, String column) {
      double times = row().number(column);
      return write(
          Term.length("w", "width of the drift", times * free.si()),
          Formulas.number(times) + "*" + free.symbol(),
          free);
    }

    /** Snow up to the top of the step spreads; the windward drift of 7-22 keeps its shape. */
    private double heldWidthM(Term free, String column) {
      double times = row().number(column);
      double widest = row().number("widest");
      double m = Math.min(times * free.si() * free.si() / clearM, widest * clearM);
      return write(
          Term.length("w", "width of the drift, held by the step", m),
          Formulas.filled(
              "min(%s*%s^2/h_c,%s*h_c)",
              Formulas.number(times), free.symbol(), Formulas.number(widest)),
          free,
          clear());
    }

    private Term clear() {
      return Term.length("h_c", "clear height above the balanced snow", clearM);
    }

    private Table.Row row() {
      return basis.tables().row("step");
    }

    private double write(Term result, String formula, Term... inputs) {
      return work.write(result, formula, basis.tables().source("step"), inputs);
    }
  }
}

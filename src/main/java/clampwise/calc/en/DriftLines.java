package clampwise.calc.en;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Steps that drifts at walls and at obstructions share. */
record DriftLines(EnTables tables, String key, EnSnow.Site site, Work work) {

  double lengthM(double riseM) {
    double times = row().number("length-per-height");
    double leastM = row().number("length-least");
    double mostM = row().number("length-most");
    return work.write(
        Term.length("l_s", "length of the drift", clamped(times * riseM, leastM, mostM)),
        "min(max(" + Formulas.number(times) + "*h,l_least),l_most)",
        source(),
        Term.length("h", "height of the wall", riseM),
        Term.length("l_least", "least length", leastM),
        Term.length("l_most", "most length", mostM));
  }

  /** Part of the coefficient that wind brings. */
  double wind(EnDrift.Step step) {
    double perHeight = row().number("per-height");
    double spread = (step.upperM() + step.lowerM()) / (perHeight * step.riseM());
    double value = clamped(Math.min(spread, full(step.riseM())), least(), most());
    String formula =
        Formulas.filled(
            "min(max(min((b_1+b_2)/(%s*h),gamma*h/s_k),%s),%s)",
            Formulas.number(perHeight), Formulas.number(least()), Formulas.number(most()));
    return work.write(
        Term.number("mu_w", "part that wind brings", value),
        formula,
        source(),
        Term.length("b_1", "length of the upper roof", step.upperM()),
        Term.length("b_2", "length of the lower roof", step.lowerM()),
        Term.length("h", "height of the step", step.riseM()),
        weight(),
        ground());
  }

  /** Coefficient of snow up to the top of an obstruction. */
  double held(double riseM) {
    String formula =
        Formulas.filled(
            "min(max(gamma*h/s_k,%s),%s)", Formulas.number(least()), Formulas.number(most()));
    return work.write(
        Term.number("mu_2", "shape coefficient at the wall", clamped(full(riseM), least(), most())),
        formula,
        source(),
        weight(),
        Term.length("h", "height of the obstruction", riseM),
        ground());
  }

  EnDrift drift(double shape, double lengthM) {
    Term low =
        Term.number("mu_low", "shape coefficient beyond", tables.row("shape").number("flat"));
    work.given(low, tables.source("shape"));
    double wallPa = pa("s_wall", "snow at the wall", Term.number("mu_2", "coefficient", shape));
    double endPa = pa("s_end", "snow beyond the drift", low);
    return new EnDrift(wallPa, endPa, lengthM);
  }

  private double pa(String symbol, String meaning, Term shape) {
    double factors = site.exposure() * site.thermal();
    return work.write(
        Term.pressure(symbol, meaning, shape.si() * factors * site.groundPa()),
        shape.symbol() + "*C_e*C_t*s_k",
        tables.table("shape").source("Eq. 5.1"),
        shape,
        Term.number("C_e", "exposure coefficient", site.exposure()),
        Term.number("C_t", "thermal coefficient", site.thermal()),
        ground());
  }

  private double full(double riseM) {
    return row().number("weight") * riseM / site.groundPa();
  }

  private Term weight() {
    return Term.unitWeight("gamma", "weight of the snow", row().number("weight"));
  }

  private Term ground() {
    return Term.pressure("s_k", "characteristic ground snow", site.groundPa());
  }

  private double least() {
    return row().number("least");
  }

  private double most() {
    return row().number("most");
  }

  private Table.Row row() {
    return tables.row(key);
  }

  private Source source() {
    return tables.source(key);
  }

  private static double clamped(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }
}

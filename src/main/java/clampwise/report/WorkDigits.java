package clampwise.report;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;

/** How numbers of shown work are printed: enough digits to key them in again. */
final class WorkDigits {

  private static final int DIGITS = 6;

  private WorkDigits() {}

  /** The number alone, in the unit of the measure. */
  static String number(Term term, Measure measure) {
    return QuantityPrint.significant(measure.value(term), DIGITS);
  }

  /** The number with its unit. */
  static String text(Term term, Measure measure) {
    String unit = measure.of(term.dimension()).symbol();
    return unit.isEmpty() ? number(term, measure) : number(term, measure) + " " + unit;
  }

  /** The number with its unit, and lengths and wires once more as the trade says them. */
  static String spoken(Term term, Measure measure) {
    Unit unit = measure.of(term.dimension());
    if (unit.equals(Units.KCMIL)) {
      return text(term, measure) + " (" + QuantityPrint.text(term.si(), Units.AWG) + ")";
    }
    double size = Math.abs(measure.value(term));
    boolean small = size > 0 && size < 1;
    if (!small || !(unit.equals(Unit.FOOT) || unit.equals(Unit.METRE))) {
      return text(term, measure);
    }
    Unit trade = unit.equals(Unit.FOOT) ? Unit.INCH : Unit.MILLIMETRE;
    String number = QuantityPrint.significant(trade.fromSi(term.si()), 4);
    return text(term, measure) + " (" + number + " " + trade.symbol() + ")";
  }
}

package clampwise.calc.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;

/**
 * Sizes of equipment grounding conductors.
 *
 * @param table NEC table 250.122 [read]: rows with {@code device} [A] and one column a metal [m²]
 */
public record GroundingSizes(Table table) {

  private static final double NOISE = 1e-9;

  private static final Source RAISED = Source.of("nec", "250.122(B)", "second-hand");

  /**
   * Least size for an overcurrent device: the next row up.
   *
   * <p>NEC table 250.122 [read]. Not applicable above its last row.
   *
   * @param deviceA rating of the device [A]
   * @param metal {@code copper} or {@code aluminium}
   * @return cross-section [m²]
   */
  public Outcome<Term> least(double deviceA, String metal, Work work) {
    for (Table.Row row : table.rows()) {
      if (deviceA <= row.number("device") + NOISE) {
        Term size = wire("S", "grounding conductor of " + metal, row.number(metal));
        String note = "Row of %.0f A.".formatted(row.number("device"));
        work.write(Line.given(size, table.source(), note));
        return new Result<>(size);
      }
    }
    return new NotApplicable<>("the table of grounding conductors ends below this device");
  }

  /**
   * Rating to size by where a circuit has no overcurrent device: I = c Isc.
   *
   * <p>NEC 690.9(B) [from memory]; handbook example 3.1 (d) [computed].
   *
   * @param isc rated short-circuit current of what feeds the circuit [A]
   * @param over rating over current, 1.25 · 1.25 [-]
   * @param source where that factor comes from
   * @return rating [A]
   */
  public static Term assumedDevice(Term isc, double over, Source source, Work work) {
    Term factor = Term.number("c", "rating over current", over);
    Term device = new Term("I_d", "device assumed", over * isc.si(), Dimension.CURRENT);
    work.write(device, "c*" + isc.symbol(), source, factor, isc);
    return device;
  }

  /**
   * Size raised with the conductors of its circuit: S' = S A' / A.
   *
   * <p>NEC 250.122(B) [second-hand], for circuits raised beyond what they need.
   *
   * @param size least size by the table [m²]
   * @param needed cross-section that the circuit needs [m²]
   * @param chosen cross-section that it has [m²]
   * @return cross-section [m²]
   */
  public static Term raised(Term size, Term needed, Term chosen, Work work) {
    double ratio = Math.max(1, chosen.si() / needed.si());
    Term raised = wire("S_r", "grounding conductor, raised", size.si() * ratio);
    String formula = size.symbol() + "*max(1," + chosen.symbol() + "/" + needed.symbol() + ")";
    work.write(raised, formula, RAISED, size, chosen, needed);
    return raised;
  }

  /** A conductor size. */
  public static Term wire(String symbol, String meaning, double areaM2) {
    return new Term(symbol, meaning, areaM2, Dimension.WIRE_SIZE);
  }
}

package clampwise.calc.en;

import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Wind pressure inside a building, EN 1991-1-4, 7.2.9. */
public final class InternalPressure {

  private static final String KEY = "internal";

  private InternalPressure() {}

  /**
   * Net wind away from the roof with overpressure inside: w = we - cpi qp with cpi = 0.2 (EN
   * 1991-1-4, 7.2.9 (6), note 2; from memory). For buildings without a dominant opening.
   *
   * @param tables tables of EN 1991-1-4
   * @param outsidePa wind outside, away from the roof and negative [Pa]
   * @param peakPa peak velocity pressure [Pa]
   * @param work takes the line
   * @return net wind, negative away from the roof [Pa]
   */
  public static double awayPa(EnTables tables, double outsidePa, double peakPa, Work work) {
    Term outside = Term.pressure("w_up", "wind away", outsidePa);
    return net(tables, "overpressure", outside, peakPa, work);
  }

  /**
   * Net wind toward the roof with suction inside: w = we - cpi qp with cpi = -0.3 (EN 1991-1-4,
   * 7.2.9 (6), note 2; from memory). For buildings without a dominant opening.
   *
   * @param tables tables of EN 1991-1-4
   * @param outsidePa wind outside, toward the roof and positive [Pa]
   * @param peakPa peak velocity pressure [Pa]
   * @param work takes the line
   * @return net wind, positive toward the roof [Pa]
   */
  public static double towardPa(EnTables tables, double outsidePa, double peakPa, Work work) {
    Term outside = Term.pressure("w_down", "wind toward", outsidePa);
    return net(tables, "underpressure", outside, peakPa, work);
  }

  private static double net(
      EnTables tables, String column, Term outside, double peakPa, Work work) {
    double inside = tables.row(KEY).number(column);
    return work.write(
        Term.pressure("w_net", "net wind", outside.si() - inside * peakPa),
        outside.symbol() + "-c_pi*q_p",
        tables.source(KEY),
        outside,
        Term.number("c_pi", "coefficient of " + column + " inside", inside),
        Term.pressure("q_p", "peak velocity pressure", peakPa));
  }
}

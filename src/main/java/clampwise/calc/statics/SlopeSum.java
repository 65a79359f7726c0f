package clampwise.calc.statics;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** Sums of down-slope forces against what holds them: a column's clamps, a panel's fixed point. */
public final class SlopeSum {

  private SlopeSum() {}

  /**
   * Down-slope force of a column against the slip strength of all its attachments.
   *
   * <p>Source: statics. The sum says nothing of a single clamp; slip along the seam is rated
   * separately from uplift.
   *
   * @param demandN sum of the column [N]
   * @param slipN sum of the slip strengths in that column, of the same limit state [N]
   * @return demand over strength
   */
  public static Term column(double demandN, double slipN, Work work) {
    return share(
        Term.force("E_c", "down-slope force of the column", demandN),
        Term.force("R_c", "slip strength of its attachments together", slipN),
        work);
  }

  /**
   * Down-slope force of a panel run at its fixed point: what the attachments on the panel bring,
   * its own weight and the snow on it.
   *
   * <p>Source: statics. Floating clips are taken to carry nothing along the slope.
   *
   * @param attachmentsN what the attachments bring [N]
   * @param panelN weight of the panel run, down the slope [N]
   * @param snowN snow on the panel run outside the array, down the slope [N]
   * @return the sum [N]
   */
  public static Term fixedPoint(double attachmentsN, double panelN, double snowN, Work work) {
    Term sum = Term.force("E_f", "force at the fixed point", attachmentsN + panelN + snowN);
    work.write(
        sum,
        "E_a+E_p+E_w",
        Source.STATICS,
        Term.force("E_a", "from the attachments on the panel run", attachmentsN),
        Term.force("E_p", "from the panel's own weight", panelN),
        Term.force("E_w", "from snow on the panel outside the array", snowN));
    return sum;
  }

  /** A force over a strength; above 1 noted. */
  public static Term share(Term demand, Term strength, Work work) {
    Term share = Term.number("U", "share of the strength used", demand.si() / strength.si());
    String formula = demand.symbol() + "/" + strength.symbol();
    String note = share.si() > 1 ? "More than it may take." : "";
    work.write(new Line(share, formula, List.of(demand, strength), Source.STATICS, note));
    return share;
  }
}

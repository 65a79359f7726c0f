package clampwise.calc.statics;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/**
 * Force of one attachment from the area nearest to it.
 *
 * @param depthM size of a module up the slope [m]
 * @param gapM gap between two rows [m]
 * @param spacingM spacing of the attachments along the line [m]
 */
public record TributaryLoad(double depthM, double gapM, double spacingM) {

  private static final Source PRACTICE =
      Source.of("practice", "tributary area", "common practice, no source");

  /**
   * Force on a line between two rows: half of each row with the gap, (d + g) s p.
   *
   * <p>Common practice, no source; exact where every edge is cut at each attachment.
   *
   * @param pressurePa net pressure [Pa]
   * @return force [N]
   */
  public Term interior(double pressurePa, Work work) {
    Term area = Term.area("A_t", "tributary area, inner line", (depthM + gapM) * spacingM);
    work.write(
        area, "(d+g)*s", PRACTICE, depth(), Term.length("g", "gap of rows", gapM), spacing());
    return force(area, pressurePa, work);
  }

  /**
   * Force on a line at the end of the rows: half of one row, d s p / 2.
   *
   * @param pressurePa net pressure [Pa]
   * @return force [N]
   */
  public Term edge(double pressurePa, Work work) {
    Term area = Term.area("A_t", "tributary area, end line", depthM * spacingM / 2);
    work.write(area, "d*s/2", PRACTICE, depth(), spacing());
    return force(area, pressurePa, work);
  }

  private Term depth() {
    return Term.length("d", "module up the slope", depthM);
  }

  private Term spacing() {
    return Term.length("s", "spacing along the line", spacingM);
  }

  private static Term force(Term area, double pressurePa, Work work) {
    Term force = Term.force("F", "force of the attachment", area.si() * pressurePa);
    Term pressure = Term.pressure("p", "net pressure", pressurePa);
    work.write(force, "p*A_t", Source.STATICS, pressure, area);
    return force;
  }
}

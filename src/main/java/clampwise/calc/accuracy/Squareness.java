package clampwise.calc.accuracy;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * A corner between two measured sides, and the diagonal between their ends.
 *
 * <p>Geometry: theorem of Pythagoras and law of cosines; no document needed.
 *
 * @param alongM one side [m]
 * @param upM the other side [m]
 */
public record Squareness(double alongM, double upM) {

  private static final Source GEOMETRY = Source.of("geometry", "law of cosines", "worked out");

  /** The diagonal of a right angle, √(a² + b²) [m]. */
  public double diagonalM() {
    return Math.sqrt(alongM * alongM + upM * upM);
  }

  /**
   * How far the corner is from square, as a deviation over a length: the sine of the angle beyond a
   * right one, (d² - a² - b²) / 2ab; positive if the corner is too wide.
   *
   * @param measuredM the diagonal as measured [m]
   * @return the deviation; beyond -1 and 1 the three lengths make no triangle
   */
  public double offSquare(double measuredM) {
    double squares = alongM * alongM + upM * upM;
    return (measuredM * measuredM - squares) / (2 * alongM * upM);
  }

  /** The diagonal, written into the work. */
  public Term show(Work work) {
    Term diagonal = Term.length("d", "diagonal of a right angle", diagonalM());
    work.write(diagonal, "sqrt(a^2+b^2)", GEOMETRY, along(), up());
    return diagonal;
  }

  /** The deviation of a measured diagonal, written into the work. */
  public Term show(double measuredM, Work work) {
    Term measured = Term.length("d_m", "diagonal as measured", measuredM);
    Term off = Term.number("e", "deviation over a length", offSquare(measuredM));
    String note = off.si() > 0 ? "The corner is too wide." : "";
    List<Term> sides = List.of(measured, along(), up());
    work.write(new Line(off, "(d_m^2-a^2-b^2)/(2*a*b)", sides, GEOMETRY, note));
    return off;
  }

  private Term along() {
    return Term.length("a", "one side", alongM);
  }

  private Term up() {
    return Term.length("b", "other side", upM);
  }
}

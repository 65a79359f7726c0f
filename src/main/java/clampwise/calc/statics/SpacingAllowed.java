package clampwise.calc.statics;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * The spacing along a line that the loads of a zone allow.
 *
 * @param lengthM longest spacing [m]
 * @param everySeams attach at least at every so many seams; 0 if every seam is still too few
 */
public record SpacingAllowed(double lengthM, int everySeams) {

  private static final Source PRACTICE =
      Source.of("practice", "tributary area", "common practice, no source");

  /** A spacing that misses a whole number of seams by rounding of sums is that number. */
  private static final double ROUNDING = 1e-9;

  /**
   * A zone's load on a line.
   *
   * @param pressurePa size of the net pressure [Pa]
   * @param depthM width of roof whose load comes to the line: a module and a gap on an inner line,
   *     half a module at the end [m]
   * @param continuity factor on the reaction for a frame that runs over its clamps; 1 for edges cut
   *     at each clamp
   */
  public record Zone(double pressurePa, double depthM, double continuity) {

    double loadNPerM() {
      return pressurePa * depthM * continuity;
    }
  }

  /**
   * Longest spacing s = R/(c p d), as length and as a number of seams, rounded down.
   *
   * <p>Common practice (tributary area), no source. Holds for positive pressure, depth and pitch.
   *
   * @param strengthN what one attachment may take [N], of the same limit state as the pressure
   * @param pitchM distance between seams [m]
   */
  public static SpacingAllowed of(Zone zone, double strengthN, double pitchM) {
    double lengthM = strengthN / zone.loadNPerM();
    double seams = Math.floor(lengthM / pitchM + ROUNDING);
    return new SpacingAllowed(lengthM, (int) Math.min(seams, Integer.MAX_VALUE));
  }

  /** The same, written into the work. */
  public static SpacingAllowed show(Zone zone, double strengthN, double pitchM, Work work) {
    SpacingAllowed allowed = of(zone, strengthN, pitchM);
    Term length = Term.length("s", "longest spacing along the line", allowed.lengthM);
    work.write(
        length,
        "R/(c*p*d)",
        PRACTICE,
        Term.force("R", "strength of one attachment", strengthN),
        Term.number("c", "factor for frames that run over their clamps", zone.continuity),
        Term.pressure("p", "net pressure", zone.pressurePa),
        Term.length("d", "width of roof whose load comes to the line", zone.depthM));
    Term ratio =
        Term.number("k", "seams from one attachment to the next", allowed.lengthM / pitchM);
    List<Term> inputs = List.of(length, Term.length("e", "distance between seams", pitchM));
    work.write(new Line(ratio, "s/e", inputs, Source.STATICS, allowed.sentence()));
    return allowed;
  }

  private String sentence() {
    return switch (everySeams) {
      case 0 -> "Even an attachment at every seam is not enough.";
      case 1 -> "Attach at every seam.";
      default -> "Attach at every " + everySeams + " seams or closer.";
    };
  }
}

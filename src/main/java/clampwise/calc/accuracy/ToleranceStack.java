package clampwise.calc.accuracy;

import clampwise.calc.Snap;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * How far the last of several modules may be off, each of which is set from the one before.
 *
 * <p>Arithmetic of tolerances: in the worst case all errors lie the same way; independent errors
 * add as the root of the sum of their squares. Worked out; no document needed.
 *
 * @param toleranceM how far a module may be off beside the one before, either way [m]
 */
public record ToleranceStack(double toleranceM) {

  private static final double NOISE = 1e-9;
  private static final Source SQUARES = Source.of("statics", "root of squares", "worked out");

  /**
   * The worst case, n t.
   *
   * @param modules number of modules since the last measured mark, from 1
   * @return how far the last one may be off [m]
   */
  public double worstM(int modules) {
    return Snap.m(modules * toleranceM);
  }

  /**
   * The likely case, t √n, for errors that do not depend on each other.
   *
   * @param modules number of modules since the last measured mark, from 1
   * @return how far the last one is likely to be off [m]
   */
  public double likelyM(int modules) {
    return Snap.m(toleranceM * Math.sqrt(modules));
  }

  /** How many modules some slack [m] bears in the worst case. */
  public int mostWorst(double slackM) {
    return most(slackM / toleranceM);
  }

  /** How many modules some slack [m] is likely to bear. */
  public int mostLikely(double slackM) {
    double share = slackM / toleranceM;
    return most(share * share);
  }

  private static int most(double modules) {
    return (int) Math.min(Integer.MAX_VALUE, Math.floor(modules * (1 + NOISE)));
  }

  /** Both cases, written into the work. */
  public List<Term> show(int modules, Work work) {
    Term number = Term.number("n", "modules since the last measured mark", modules);
    Term worst = Term.length("w", "stack in the worst case", modules * toleranceM);
    Term likely = Term.length("r", "likely stack", toleranceM * Math.sqrt(modules));
    work.write(worst, "n*t", Source.STATICS, number, tolerance());
    work.write(likely, "t*sqrt(n)", SQUARES, number, tolerance());
    return List.of(worst, likely);
  }

  /** How many modules some slack bears in both cases, written into the work. */
  public List<Term> showMost(double slackM, Work work) {
    Term slack = Term.length("s", "slack", slackM);
    Term worst = Term.number("a", "modules in the worst case", slackM / toleranceM);
    work.write(worst, "s/t", Source.STATICS, slack, tolerance());
    Term likely = Term.number("b", "modules in the likely case", worst.si() * worst.si());
    work.write(likely, "(s/t)^2", SQUARES, slack, tolerance());
    Term wholeWorst = Term.number("k_w", "mark again after, worst case", mostWorst(slackM));
    work.write(Line.given(wholeWorst, Source.STATICS, "Whole modules of a."));
    Term wholeLikely = Term.number("k_r", "mark again after, likely case", mostLikely(slackM));
    work.write(Line.given(wholeLikely, Source.STATICS, "Whole modules of b."));
    return List.of(wholeWorst, wholeLikely);
  }

  private Term tolerance() {
    return Term.length("t", "tolerance of a module", toleranceM);
  }
}

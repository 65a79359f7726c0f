package clampwise.calc.electrical;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;

/** Clips that hold cables to frames. */
public final class CableClips {

  private static final double NOISE = 1e-9;

  private CableClips() {}

  /**
   * Least number of clips on runs of cable: the next whole number from L / s.
   *
   * @param length length of the runs [m]
   * @param spacing widest spacing [m]
   * @return clips
   */
  public static Term least(Term length, Term spacing, Work work) {
    Term share = Term.number("n", "spacings in the runs", length.si() / spacing.si());
    work.write(share, length.symbol() + "/" + spacing.symbol(), Source.STATICS, length, spacing);
    Term whole = Term.number("n_c", "least number of clips", least(length.si(), spacing.si()));
    work.write(Line.given(whole, Source.STATICS, "The next whole number from n."));
    return whole;
  }

  /** Least number of clips. */
  public static int least(double lengthM, double spacingM) {
    return (int) Math.ceil(lengthM / spacingM - NOISE);
  }
}

package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/** What a seam passes on to its clips. */
public final class SeamClips {

  private SeamClips() {}

  /**
   * The seam as a continuous beam over its clip lines, once under its attachments and once under
   * the even load that the roof alone would bring, written into the work: both beams, then the most
   * loaded clip under each and their ratio.
   *
   * <p>Source: beam theory; constant stiffness of the seam. Not applicable to fewer than two clips
   * or attachments past the ends of the seam.
   *
   * @param seam the seam with its clips as supports
   * @param attachments forces of the attachments [N] at their places [m]
   * @param evenNPerM the roof's own load per length of seam: pressure times seam pitch [N/m]
   * @return the most loaded clip under the attachments [N], then its ratio to the even load's
   */
  public static Outcome<List<Term>> show(
      Beam seam, List<BeamLoad.Point> attachments, double evenNPerM, Work work) {
    List<BeamLoad> even = List.of(new BeamLoad.Even(seam.fromM(), seam.toM(), evenNPerM));
    return BeamWork.show(seam, List.copyOf(attachments), "", work)
        .then(
            array ->
                BeamWork.show(seam, even, "_e", work)
                    .then(own -> new Outcome.Result<>(compare(array, own, work))));
  }

  private static List<Term> compare(List<Term> array, List<Term> own, Work work) {
    Term most = most("C", "most loaded clip under the attachments", array, work);
    Term even = most("C_e", "most loaded clip under the roof's own load", own, work);
    Term ratio = Term.number("k", "clip load over that of the roof alone", most.si() / even.si());
    String note =
        ratio.si() > 1
            ? "The attachments load a clip more than the roof's own load: use more seams or"
                + " stagger."
            : "";
    work.write(new Line(ratio, "C/C_e", List.of(most, even), Source.STATICS, note));
    return List.of(most, ratio);
  }

  private static Term most(String symbol, String meaning, List<Term> reactions, Work work) {
    double mostN = reactions.stream().mapToDouble(Term::si).max().orElse(0);
    String formula = String.join(",", reactions.stream().map(Term::symbol).toList());
    Term most = Term.force(symbol, meaning, mostN);
    work.write(new Line(most, "max(" + formula + ")", reactions, Source.STATICS, ""));
    return most;
  }
}

package clampwise.calc.statics;

import clampwise.calc.Outcome;
import java.util.Arrays;
import java.util.List;

/**
 * What a seam passes on to its clips.
 *
 * @param fromAttachmentsN force of each clip from the attachments [N]
 * @param fromEvenLoadN force of each clip from the roof's own even load [N]
 */
public record SeamClips(double[] fromAttachmentsN, double[] fromEvenLoadN) {

  /**
   * The seam as a continuous beam over its clip lines, once under its attachments and once under
   * the even load that the roof alone would bring.
   *
   * <p>Source: beam theory; constant stiffness of the seam. Not applicable to fewer than two clips
   * or attachments past the ends of the seam.
   *
   * @param seam the seam with its clips as supports
   * @param attachments forces of the attachments [N] at their places [m]
   * @param evenNPerM the roof's own load per length of seam: pressure times seam pitch [N/m]
   */
  public static Outcome<SeamClips> of(
      Beam seam, List<BeamLoad.Point> attachments, double evenNPerM) {
    Outcome<BeamForces> array = seam.under(List.<BeamLoad>copyOf(attachments));
    return array.then(
        forces ->
            seam.under(evenNPerM)
                .then(
                    even ->
                        new Outcome.Result<>(
                            new SeamClips(forces.reactionsN(), even.reactionsN()))));
  }

  /** Number of the clip that the attachments load most, from 0. */
  public int worst() {
    int worst = 0;
    for (int i = 1; i < fromAttachmentsN.length; i++) {
      worst = fromAttachmentsN[i] > fromAttachmentsN[worst] ? i : worst;
    }
    return worst;
  }

  /** The most loaded clip under the attachments [N]. */
  public double mostN() {
    return fromAttachmentsN[worst()];
  }

  /** The most loaded clip under the roof's own even load [N]. */
  public double mostFromEvenLoadN() {
    return Arrays.stream(fromEvenLoadN).max().orElse(0);
  }
}

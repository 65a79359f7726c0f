package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamLoad;
import clampwise.facts.layout.ZoneLookup;
import java.util.List;

/** Loads of the seams of a plane on their clips, from the attachments and from the bare roof. */
final class ClipPaths {

  private final PlaneLoads plane;
  private final double pitchM;
  private final BareRoof roof;

  /** Paths of a plane on which wind is known. */
  ClipPaths(PlaneLoads plane, double pitchM) {
    this.plane = plane;
    this.pitchM = pitchM;
    this.roof = new BareRoof(wind(plane), new ZoneLookup(plane.plane().zones()), pitchM);
  }

  private static FieldWind wind(PlaneLoads plane) {
    return plane.fields().get(0).loads().standard().wind().result().orElseThrow();
  }

  /** What the attachments of a seam bring to its clips in the combination with most uplift. */
  Outcome<ClipPath> of(SeamRun run, Beam seam, List<SeamRun.Pull> pulls) {
    int combination = mostUplift(pulls);
    return seam.under(ClipPath.loads(pulls, combination))
        .then(
            forces ->
                new Result<>(
                    new ClipPath(plane, run, pulls, combination, seam, forces.reactionsN(), this)));
  }

  /** What wind on the bare roof brings to a seam, in the same combination. */
  Outcome<List<BeamLoad>> roof(ClipPath path) {
    double factor = plane.combinations().get(path.combination()).factors().wind();
    return roof.loads(path.run(), path.seam().supportsM(), factor);
  }

  String zone(SeamRun run, double clipM) {
    return roof.zone(run, clipM);
  }

  double pitchM() {
    return pitchM;
  }

  private int mostUplift(List<SeamRun.Pull> pulls) {
    int most = 0;
    double mostN = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < plane.combinations().size(); k++) {
      double sumN = 0;
      for (SeamRun.Pull pull : pulls) {
        sumN += pull.forces().get(k).normalN();
      }
      if (sumN > mostN) {
        most = k;
        mostN = sumN;
      }
    }
    return most;
  }
}

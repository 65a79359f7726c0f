package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamForces;
import clampwise.calc.statics.BeamLoad;
import clampwise.facts.layout.SeamLine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Loads of the seams of a plane on their clips, from the attachments and from the bare roof. */
final class ClipPaths {

  /** A seam on fewer clip lines is no beam. */
  static final int LEAST_CLIPS = 2;

  private final PlaneLoads plane;
  private final double pitchM;
  private final BareRoof roof;
  private final Map<Integer, Outcome<BareSeam>> most = new HashMap<>();
  private final Map<Loaded, Outcome<BeamForces>> known = new HashMap<>();

  /** A stretch of the plane's clip lines with its loads: most seams of a plane are loaded alike. */
  private record Loaded(double fromM, double toM, List<BeamLoad> loads) {}

  /** Paths of a plane on which wind is known. */
  ClipPaths(PlaneLoads plane, double pitchM) {
    this.plane = plane;
    this.pitchM = pitchM;
    this.roof = new BareRoof(wind(plane), plane.fields().get(0).site().onPlane().zones(), pitchM);
  }

  private static FieldWind wind(PlaneLoads plane) {
    return plane.fields().get(0).loads().standard().wind().result().orElseThrow();
  }

  /** What the attachments of a seam bring to its clips in the combination with most uplift. */
  Outcome<ClipPath> of(SeamRun run, Beam seam, List<SeamRun.Pull> pulls) {
    int combination = mostUplift(pulls);
    return under(seam, ClipPath.loads(pulls, combination))
        .then(
            forces ->
                new Result<>(
                    new ClipPath(plane, run, pulls, combination, seam, forces.reactionsN(), this)));
  }

  /** A seam of the plane under its loads; seams loaded alike are computed once. */
  Outcome<BeamForces> under(Beam seam, List<BeamLoad> loads) {
    return known.computeIfAbsent(
        new Loaded(seam.fromM(), seam.toM(), loads), key -> seam.under(loads));
  }

  /** What wind on the bare roof brings to a seam, in the same combination. */
  Outcome<List<BeamLoad>> roof(ClipPath path) {
    double factor = plane.combinations().get(path.combination()).factors().wind();
    return roof.loads(path.run(), path.seam().supportsM(), factor);
  }

  /** The clip of the plane that wind on the bare roof loads most in a combination. */
  Outcome<BareSeam> mostOfPlane(int combination) {
    return most.computeIfAbsent(combination, this::most);
  }

  private Outcome<BareSeam> most(int combination) {
    double factor = plane.combinations().get(combination).factors().wind();
    Outcome<BareSeam> most = new NotApplicable<>("no seam of the plane lies on two clip lines");
    for (SeamLine seam : plane.plane().seams()) {
      for (SeamRun run : SeamRun.bare(seam, plane.plane().endLapsM())) {
        Outcome<BareSeam> own = most(run, factor);
        most = most.result().isEmpty() ? own : orMore(most, own);
      }
    }
    return most;
  }

  private static Outcome<BareSeam> orMore(Outcome<BareSeam> one, Outcome<BareSeam> other) {
    return other.result().isEmpty()
        ? one
        : one.then(known -> other.then(next -> new Result<>(BareSeam.orMore(known, next))));
  }

  private Outcome<BareSeam> most(SeamRun run, double factor) {
    double[] clipsM = run.supportsM(plane.plane().supports());
    if (clipsM.length < LEAST_CLIPS) {
      return new NotApplicable<>(run.name() + " lies on fewer than two clip lines");
    }
    Beam seam = new Beam(run.fromM(), run.toM(), clipsM);
    return roof.loads(run, clipsM, factor)
        .then(loads -> under(seam, loads).then(f -> new Result<>(most(run, seam, loads, f))));
  }

  private BareSeam most(SeamRun run, Beam seam, List<BeamLoad> loads, BeamForces forces) {
    double[] reactionsN = forces.reactionsN();
    int most = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      most = reactionsN[i] > reactionsN[most] ? i : most;
    }
    return new BareSeam(
        run, seam, loads, most, reactionsN[most], zones(run, seam.supportsM()).get(most));
  }

  /** Wind zones at the clips of a seam; empty where there is none. */
  List<String> zones(SeamRun run, double[] clipsM) {
    return roof.zones(run, clipsM);
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

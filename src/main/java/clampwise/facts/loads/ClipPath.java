package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamLoad;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A seam with what its attachments bring to its clips.
 *
 * @param combination number of the combination with most uplift
 * @param seam the seam as a beam on its clips
 * @param reactionsN pull on each clip [N]; negative where it is pushed down
 */
record ClipPath(
    PlaneLoads plane,
    SeamRun run,
    List<SeamRun.Pull> pulls,
    int combination,
    Beam seam,
    double[] reactionsN,
    ClipPaths paths) {

  private static final double ROUNDING_N = 1e-6;

  Subject subject() {
    return plane.subject().part(run.name());
  }

  /**
   * The most loaded clip against what a clip may take.
   *
   * @param roofN what the bare roof brings to a clip of each zone, see {@link #roofN}
   */
  ClipUse use(double strengthN, Outcome<Map<String, Double>> roofN) {
    int worst = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      worst = reactionsN[i] > reactionsN[worst] ? i : worst;
    }
    String zone = zone(worst);
    SeamRun.Pull nearest = nearest(worst);
    return new ClipUse(
        subject(),
        cause(nearest),
        nearest.attachment().at(),
        plane.forceUnit(),
        units(),
        run.name(),
        plane.covering(),
        combinationName(),
        clipM(worst),
        pullN(worst),
        rounded(strengthN),
        roofN.result().map(known -> roof(Objects.requireNonNull(known.get(zone)))),
        spread(nearest, pullN(worst) / strengthN));
  }

  private String roof(double roofN) {
    return "wind on the bare roof pulls " + QuantityPrint.text(roofN, plane.forceUnit());
  }

  /** The most that wind on the bare roof brings to a clip of this seam, by wind zone [N]. */
  Outcome<Map<String, Double>> roofN(List<BeamLoad> roof) {
    return seam.under(roof).then(forces -> new Result<>(mostByZone(forces.reactionsN())));
  }

  private Map<String, Double> mostByZone(double[] roofN) {
    Map<String, Double> mostN = new HashMap<>();
    for (int i = 0; i < roofN.length; i++) {
      mostN.merge(zone(i), roofN[i], Math::max);
    }
    return mostN;
  }

  /** The clip that gets most in comparison with what the bare roof brings to the clips there. */
  ClipShare share(Map<String, Double> roofN) {
    int worst = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      double share = reactionsN[i] / Objects.requireNonNull(roofN.get(zone(i)));
      worst =
          share > reactionsN[worst] / Objects.requireNonNull(roofN.get(zone(worst))) ? i : worst;
    }
    SeamRun.Pull nearest = nearest(worst);
    double ownN = Objects.requireNonNull(roofN.get(zone(worst)));
    return new ClipShare(
        subject(),
        cause(nearest),
        nearest.attachment().at(),
        plane.forceUnit(),
        units(),
        run.name(),
        zone(worst),
        combinationName(),
        clipM(worst),
        pullN(worst),
        rounded(ownN),
        spread(nearest, pullN(worst) / ownN));
  }

  private String zone(int clip) {
    return paths.zone(run, clipM(clip));
  }

  private double clipM(int clip) {
    return seam.supportsM()[clip];
  }

  private double pullN(int clip) {
    return rounded(Math.max(0, reactionsN[clip]));
  }

  private static double rounded(double forceN) {
    return Math.rint(forceN / ROUNDING_N) * ROUNDING_N;
  }

  private SeamRun.Pull nearest(int clip) {
    return pulls.stream()
        .min(Comparator.comparingDouble(p -> Math.abs(p.attachment().upM() - clipM(clip))))
        .orElseThrow();
  }

  private static Subject cause(SeamRun.Pull nearest) {
    return nearest.field().site().subject().part("clips");
  }

  private String combinationName() {
    return plane.combinations().get(combination).name();
  }

  private Map<String, Unit> units() {
    return Map.of("clipM", plane.lengthUnit());
  }

  /** How many seams a module edge would have to be held on, for a clip load that is too high. */
  private String spread(SeamRun.Pull nearest, double share) {
    Attachment attachment = nearest.attachment();
    return nearest.field().shares().of(attachment).stream()
        .findFirst()
        .map(own -> spread(own.edge().attachments().size(), own.module(), share))
        .orElse("take the attachments off this seam");
  }

  private String spread(int clamps, PlacedModule module, double share) {
    int seams = (int) Math.floor(module.alongM() / paths.pitchM());
    int needed = (int) Math.ceil(clamps * Math.max(1, share) - 1e-9);
    if (needed > seams) {
      String now = clamps < seams ? "even on all " + seams : "on all " + seams + " already";
      return "a module edge would have to be held on "
          + needed
          + " seams ("
          + now
          + " it is too much): use lines closer to the clips' own spacing, or stronger clips";
    }
    return "hold each module edge on "
        + needed
        + " of the "
        + seams
        + " seams that it crosses instead of "
        + clamps
        + ", or stagger the attachments";
  }
}

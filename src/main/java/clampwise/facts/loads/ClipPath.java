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
import java.util.Optional;

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

  /** The pulls of the attachments in the governing combination. */
  List<BeamLoad> loads() {
    return loads(pulls, combination);
  }

  static List<BeamLoad> loads(List<SeamRun.Pull> pulls, int combination) {
    return pulls.stream()
        .<BeamLoad>map(
            pull ->
                new BeamLoad.Point(
                    pull.attachment().upM(), pull.forces().get(combination).normalN()))
        .toList();
  }

  /**
   * What wind on the bare roof brings to the clips.
   *
   * @param loads along the seam
   * @param reactionsN of each clip [N]
   * @param mostOfZone for each clip, the one that the bare roof loads most among those in its zone
   */
  record Bare(List<BeamLoad> loads, double[] reactionsN, int[] mostOfZone) {

    double mostOfZoneN(int clip) {
      return reactionsN[mostOfZone[clip]];
    }
  }

  /** The same seam under wind on the bare roof. */
  Outcome<Bare> bare(List<BeamLoad> roof) {
    return paths
        .under(seam, roof)
        .then(
            forces -> {
              double[] roofN = forces.reactionsN();
              return new Result<>(new Bare(roof, roofN, mostOfZone(roofN)));
            });
  }

  private int[] mostOfZone(double[] roofN) {
    List<String> zones = paths.zones(run, seam.supportsM());
    Map<String, Integer> most = new HashMap<>();
    for (int i = 0; i < roofN.length; i++) {
      most.merge(zones.get(i), i, (one, other) -> roofN[other] > roofN[one] ? other : one);
    }
    int[] mostOfZone = new int[roofN.length];
    for (int i = 0; i < roofN.length; i++) {
      int highest = most.getOrDefault(zones.get(i), i);
      mostOfZone[i] = roofN[highest] > roofN[i] ? highest : i;
    }
    return mostOfZone;
  }

  /** The most loaded clip against what a clip may take. */
  ClipUse use(double strengthN, Outcome<Bare> bare) {
    int worst = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      worst = reactionsN[i] > reactionsN[worst] ? i : worst;
    }
    int clip = worst;
    SeamRun.Pull nearest = nearest(clip);
    return new ClipUse(
        subject(),
        cause(nearest),
        nearest.attachment().at(),
        plane.forceUnit(),
        units(),
        run.name(),
        plane.covering(),
        combinationName(),
        clipM(clip),
        pullN(clip),
        rounded(strengthN),
        Math.rint(pullN(clip) / strengthN * 1e9) / 1e9,
        rounded(plane.limits().get("utilisation-note").si() * strengthN),
        bare.result().map(known -> roof(known.mostOfZoneN(clip))),
        spread(nearest, pullN(clip) / strengthN),
        Optional.of(new ClipChain(this, clip, Optional.empty())));
  }

  private String roof(double roofN) {
    return "wind on the bare roof pulls " + QuantityPrint.text(roofN, plane.forceUnit());
  }

  /**
   * The most loaded clip where it gets more than the bare roof brings to any clip of the plane,
   * else the one that gets most in comparison with what the bare roof brings to the clips there.
   */
  ClipShare share(Bare bare, BareSeam most) {
    int highest = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      highest = reactionsN[i] > reactionsN[highest] ? i : highest;
    }
    return pullN(highest) > rounded(most.forceN())
        ? share(highest, bare, most, most)
        : share(atItsPlace(bare), bare, most);
  }

  private int atItsPlace(Bare bare) {
    int worst = 0;
    for (int i = 1; i < reactionsN.length; i++) {
      double share = reactionsN[i] / bare.mostOfZoneN(i);
      worst = share > reactionsN[worst] / bare.mostOfZoneN(worst) ? i : worst;
    }
    return worst;
  }

  private ClipShare share(int clip, Bare bare, BareSeam most) {
    int own = bare.mostOfZone[clip];
    double ownN = bare.reactionsN[own];
    return share(clip, bare, most, new BareSeam(run, seam, bare.loads, own, ownN, zone(clip)));
  }

  /** A clip of this seam, held against a clip of a bare one. */
  private ClipShare share(int clip, Bare bare, BareSeam most, BareSeam against) {
    SeamRun.Pull nearest = nearest(clip);
    return new ClipShare(
        subject(),
        cause(nearest),
        nearest.attachment().at(),
        plane.forceUnit(),
        units(),
        run.name(),
        zone(clip),
        combinationName(),
        clipM(clip),
        pullN(clip),
        rounded(bare.mostOfZoneN(clip)),
        most.zone(),
        rounded(most.forceN()),
        false,
        spread(nearest, pullN(clip) / against.forceN()),
        Optional.of(new ClipChain(this, clip, Optional.of(against))));
  }

  private String zone(int clip) {
    return paths.zones(run, seam.supportsM()).get(clip);
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
    return Map.of("clipM", plane.lengthUnit(), "utilisation", Unit.NUMBER);
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

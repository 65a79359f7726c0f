package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.BeamLoad;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.Pressures;
import clampwise.facts.layout.ZoneArea;
import clampwise.facts.layout.ZoneLookup;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Wind on a seam as if there were no array: roof components and cladding, with internal pressure,
 * in the zone of each clip, on the area that a clip holds.
 */
final class BareRoof {

  private static final double ROUNDING_M = 1e-6;

  private final FieldWind wind;
  private final ZoneLookup zones;
  private final double pitchM;
  private final Map<Place, Outcome<Pressures>> known = new HashMap<>();
  private final Map<Line, List<String>> zonesAlong = new HashMap<>();

  private record Place(String zone, double spanM) {}

  /** A stretch of a seam by where it lies and begins. */
  private record Line(double alongM, double fromM) {}

  BareRoof(FieldWind wind, ZoneLookup zones, double pitchM) {
    this.wind = wind;
    this.zones = zones;
    this.pitchM = pitchM;
  }

  /** Zones at all clips of a seam, from the lowest on; empty where there is none. */
  List<String> zones(SeamRun run, double[] clipsM) {
    return zonesAlong.computeIfAbsent(
        new Line(run.seam().alongM(), run.fromM()),
        line -> Arrays.stream(clipsM).mapToObj(clipM -> zone(line.alongM, clipM)).toList());
  }

  private String zone(double alongM, double clipM) {
    return zones.at(alongM, clipM).map(ZoneArea::name).orElse("");
  }

  /**
   * Even loads away from the roof, one for each clip, from halfway to the clip below to halfway to
   * the one above.
   *
   * @param factor of wind in the combination
   */
  Outcome<List<BeamLoad>> loads(SeamRun run, double[] clipsM, double factor) {
    List<BeamLoad> loads = new ArrayList<>(clipsM.length);
    List<String> names = zones(run, clipsM);
    for (int i = 0; i < clipsM.length; i++) {
      Outcome<Pressures> pressures = pressures(names.get(i), spanM(clipsM, i));
      if (pressures instanceof NotApplicable<Pressures> none) {
        return new NotApplicable<>(none.reason());
      }
      double awayPa = -((Result<Pressures>) pressures).value().awayPa();
      double fromM = i == 0 ? run.fromM() : (clipsM[i - 1] + clipsM[i]) / 2;
      double toM = i == clipsM.length - 1 ? run.toM() : (clipsM[i] + clipsM[i + 1]) / 2;
      loads.add(new BeamLoad.Even(fromM, toM, factor * awayPa * pitchM));
    }
    return new Result<>(loads);
  }

  private Outcome<Pressures> pressures(String zone, double spanM) {
    return known.computeIfAbsent(
        new Place(zone, spanM), key -> wind.bare(key.zone, key.spanM, pitchM, Work.unread()));
  }

  /** The longer of the two spans beside a clip. */
  private static double spanM(double[] clipsM, int i) {
    double below = i == 0 ? 0 : clipsM[i] - clipsM[i - 1];
    double above = i == clipsM.length - 1 ? 0 : clipsM[i + 1] - clipsM[i];
    return Math.rint(Math.max(below, above) / ROUNDING_M) * ROUNDING_M;
  }
}

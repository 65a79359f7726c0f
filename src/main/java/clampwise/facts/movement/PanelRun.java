package clampwise.facts.movement;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.Snap;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.job.Flag;
import java.util.List;
import org.locationtech.jts.geom.Envelope;

/** Finds how long the panel runs of a plane are. */
final class PanelRun {

  private PanelRun() {}

  /** The longest run: eave to ridge, or from one end lap to the next where panels slide there. */
  static Outcome<Double> longestM(MovingPlane moving) {
    PlaneLayout plane = moving.plane();
    if (plane.outline().isEmpty()) {
      return new NotApplicable<>(plane.reading().outlineUnknown());
    }
    if (moving.isPlaneKeyLost("sliding-end-laps")) {
      String laps = "whether panels slide at the end laps of plane " + plane.name();
      return new NotApplicable<>(laps + " could not be read");
    }
    boolean slides = plane.plane().slidingEndLaps().filter(Flag::value).isPresent();
    if (slides && plane.reading().areEndLapsLost()) {
      return new NotApplicable<>(plane.reading().endLapsUnknown());
    }
    return new Result<>(longestM(plane, slides ? plane.endLapsM() : List.of()));
  }

  private static double longestM(PlaneLayout plane, List<Double> lapsM) {
    if (plane.seams().isEmpty()) {
      Envelope box = plane.outline().orElseThrow().getEnvelopeInternal();
      return longestM(box.getMinY(), box.getMaxY(), lapsM);
    }
    double longest = 0;
    for (SeamLine seam : plane.seams()) {
      longest = Math.max(longest, longestM(seam.fromUpM(), seam.toUpM(), lapsM));
    }
    return longest;
  }

  private static double longestM(double fromM, double toM, List<Double> lapsM) {
    double start = fromM;
    double longest = 0;
    for (double lap : lapsM) {
      if (lap > start && lap < toM) {
        longest = Math.max(longest, lap - start);
        start = lap;
      }
    }
    return Snap.m(Math.max(longest, toM - start));
  }
}

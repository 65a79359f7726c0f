package clampwise.facts.clamps;

import clampwise.calc.SeamPositions;
import clampwise.facts.layout.SeamLine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Seams of a plane by the stretch of slope they run over. */
final class SeamRuns {

  private static final double SAME_M = 1e-6;

  private record Stretch(double fromM, double toM) {}

  private final List<SeamLine> seams;
  private final boolean allAlike;
  private final Map<Stretch, SeamPositions> known = new HashMap<>();

  SeamRuns(List<SeamLine> seams) {
    this.seams = seams;
    this.allAlike =
        seams.stream().map(s -> new Stretch(s.fromUpM(), s.toUpM())).distinct().count() <= 1;
  }

  /** Seams that run over the whole of a stretch. */
  SeamPositions over(double fromUpM, double toUpM) {
    Stretch wanted = allAlike ? new Stretch(0, 0) : new Stretch(fromUpM, toUpM);
    return known.computeIfAbsent(wanted, stretch -> positions(fromUpM, toUpM));
  }

  private SeamPositions positions(double fromUpM, double toUpM) {
    return SeamPositions.surveyed(
        seams.stream()
            .filter(seam -> allAlike || runsOver(seam, fromUpM, toUpM))
            .map(SeamLine::alongM)
            .toList());
  }

  private static boolean runsOver(SeamLine seam, double fromUpM, double toUpM) {
    return seam.fromUpM() <= fromUpM + SAME_M && toUpM <= seam.toUpM() + SAME_M;
  }
}

package clampwise.facts.loads;

import clampwise.calc.statics.Beam;
import java.util.Arrays;
import java.util.List;

/** What all clips of a plane take together from the attachments. */
record ClipSums(PlaneLoads plane) {

  List<ClipPath> paths() {
    ClipPaths paths = new ClipPaths(plane, 16 * 0.0254);
    return SeamRun.of(plane, plane.plane().endLapsM()).stream()
        .map(run -> path(run, paths))
        .toList();
  }

  private ClipPath path(SeamRun run, ClipPaths paths) {
    Beam seam = new Beam(run.fromM(), run.toM(), run.supportsM(plane.plane().supports()));
    return run.pulls().then(pulls -> paths.of(run, seam, pulls)).result().orElseThrow();
  }

  double sumN() {
    return paths().stream().mapToDouble(path -> Arrays.stream(path.reactionsN()).sum()).sum();
  }
}

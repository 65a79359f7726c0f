package clampwise.facts.loads;

import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamLoad;
import java.util.List;

/**
 * A seam under wind on the bare roof, and the clip of it that is meant.
 *
 * @param seam the seam as a beam on its clips
 * @param loads along it, in one combination
 * @param clip number of the clip, from 0
 * @param forceN pull on that clip [N]
 * @param zone wind zone of that clip
 */
record BareSeam(
    SeamRun run, Beam seam, List<BeamLoad> loads, int clip, double forceN, String zone) {

  static BareSeam orMore(BareSeam one, BareSeam other) {
    return other.forceN > one.forceN ? other : one;
  }
}

package clampwise.gate;

import clampwise.facts.layout.Attachment;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far apart the attachments of a field mostly are along their lines.
 *
 * @param usualM the distance that occurs most, the smaller of two [m]; 0 where there is none
 */
record Spacing(double usualM) {

  /** Distances are told apart to a millimetre. */
  private static final double PER_M = 1000;

  static Spacing of(List<Attachment> attachments) {
    Map<Long, Integer> counts = new TreeMap<>();
    for (int i = 1; i < attachments.size(); i++) {
      Attachment one = attachments.get(i - 1);
      Attachment next = attachments.get(i);
      if (one.line() == next.line() && one.line() > 0) {
        counts.merge(Math.round((next.alongM() - one.alongM()) * PER_M), 1, Integer::sum);
      }
    }
    long usual = 0;
    int most = 0;
    for (Map.Entry<Long, Integer> each : counts.entrySet()) {
      if (each.getValue() > most) {
        most = each.getValue();
        usual = each.getKey();
      }
    }
    return new Spacing(usual / PER_M);
  }
}

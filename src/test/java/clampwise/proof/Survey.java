package clampwise.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Measures the seams of a draft as a crew does: each within two millimetres of the drawing. */
final class Survey {
  private static final int SPREAD_MM = 2;

  private Survey() {}

  static void measure(Draft draft, Random random) {
    String seams = "planes.south.seams.";
    double firstMm = Lengths.mm(draft, seams + "first");
    double pitchMm = Lengths.mm(draft, "panels.sheet.pitch");
    double widthMm = Lengths.plane(draft, "south")[0];
    List<Object> measured = new ArrayList<>();
    for (double at = firstMm; at < widthMm; at += pitchMm) {
      long mm = Math.round(at) + random.nextInt(2 * SPREAD_MM + 1) - SPREAD_MM;
      measured.add(mm + " mm");
    }
    draft.set(seams + "surveyed", measured);
  }
}

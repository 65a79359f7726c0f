package clampwise.calc.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The clamps of one line. Every module edge on the line is a beam of its own on the clamps between
 * its corners; a clamp that holds the module below and the one above adds both.
 *
 * @param clampsM places along the line, from left to right [m]
 */
public record ClampLine(double[] clampsM) {

  private static final int LEAST_CLAMPS = 2;

  /**
   * Reactions of all clamps: statics with overhangs for an edge on two clamps, a continuous beam
   * for one on more. No load is shared between clamps beyond that.
   *
   * @param edges the module edges on this line, from below and from above
   * @return forces of the clamps [N]
   */
  public LineForces under(List<ModuleEdge> edges) {
    double[] reactionsN = new double[clampsM.length];
    double[] tributaryN = new double[clampsM.length];
    List<ModuleEdge> held = new ArrayList<>();
    List<ModuleEdge> notHeld = new ArrayList<>();
    for (ModuleEdge edge : edges) {
      int first = firstFrom(edge.fromM());
      double[] under = within(first, edge.toM());
      if (under.length < LEAST_CLAMPS) {
        notHeld.add(edge);
        continue;
      }
      held.add(edge);
      add(reactionsN, first, reactionsN(edge, under), 1);
      double[] widthsM = Tributary.widthsM(edge.fromM(), edge.toM(), under);
      add(tributaryN, first, widthsM, edge.loadNPerM());
    }
    return new LineForces(reactionsN, tributaryN, held, notHeld);
  }

  private static double[] reactionsN(ModuleEdge edge, double[] clampsM) {
    return new Beam(edge.fromM(), edge.toM(), clampsM)
        .under(edge.loadNPerM())
        .result()
        .orElseThrow(() -> new IllegalArgumentException("clamps of a line are not in order"))
        .reactionsN();
  }

  private int firstFrom(double m) {
    int found = Arrays.binarySearch(clampsM, m);
    return found >= 0 ? found : -found - 1;
  }

  private double[] within(int first, double toM) {
    int end = first;
    while (end < clampsM.length && clampsM[end] <= toM) {
      end++;
    }
    return Arrays.copyOfRange(clampsM, first, end);
  }

  private static void add(double[] sums, int first, double[] parts, double factor) {
    for (int i = 0; i < parts.length; i++) {
      sums[first + i] += factor * parts[i];
    }
  }
}

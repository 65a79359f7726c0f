package clampwise.calc;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A row of modules over seams: which modules find a seam in their clamp zones, and where the row
 * would have to start so that more of them do.
 *
 * <p>Clamps exist only at seams, so a clamp's place on the module's edge is decided by the seam.
 * Geometry; no source needed.
 *
 * @param seams the seams under the row
 * @param row the modules' edges, each with its distance from the start of the row
 */
public record SeamPhase(SeamPositions seams, List<SeamPhase.Place> row) {

  /**
   * One module of a row.
   *
   * @param fromStartM distance of its left corner from the start of the row [m]
   * @param edge its edge across the seams
   */
  public record Place(double fromStartM, ClampedEdge edge) {}

  public SeamPhase {
    row = List.copyOf(row);
  }

  /** A row of equal modules with equal gaps [m]. */
  public static SeamPhase uniform(SeamPositions seams, ClampedEdge edge, double gapM, int modules) {
    double stepM = edge.edgeM() + gapM;
    return new SeamPhase(
        seams, IntStream.range(0, modules).mapToObj(i -> new Place(i * stepM, edge)).toList());
  }

  /**
   * How far the seams move within the module from one module of a uniform row to the next.
   *
   * @param edgeM module edge across the seams [m]
   * @param gapM gap between modules [m]
   * @param pitchM seam pitch [m]
   * @return the drift, from 0 to below the pitch [m]
   */
  public static double driftM(double edgeM, double gapM, double pitchM) {
    double stepM = edgeM + gapM;
    return Snap.m(stepM - pitchM * Math.floor(Snap.m(stepM) / pitchM));
  }

  /** Numbers, from 1, of the modules that comply when the row starts at a place [m]. */
  public List<Integer> complying(double startM) {
    return IntStream.range(0, row.size())
        .filter(i -> complies(row.get(i), startM))
        .mapToObj(i -> i + 1)
        .toList();
  }

  private boolean complies(Place place, double startM) {
    return place.edge().complies(seams, startM + place.fromStartM());
  }

  /**
   * The starts of the row for which one module complies.
   *
   * @param module its number, from 1
   * @param range where the row may start [m]
   */
  public Intervals startsFor(int module, Interval range) {
    Place place = row.get(module - 1);
    double byM = place.fromStartM();
    Interval corner = new Interval(range.fromM() + byM, range.toM() + byM);
    return place.edge().corners(seams, corner).shifted(-byM);
  }

  /**
   * How many modules comply for every start within a range, exactly, in n log n steps.
   *
   * @param range where the row may start [m]; one pitch is enough if the seams have one
   */
  public PhaseSweep sweep(Interval range) {
    List<Interval> all = new ArrayList<>();
    for (int module = 1; module <= row.size(); module++) {
      all.addAll(startsFor(module, range).parts());
    }
    return PhaseSweep.of(all, new Interval(Snap.m(range.fromM()), Snap.m(range.toM())));
  }
}

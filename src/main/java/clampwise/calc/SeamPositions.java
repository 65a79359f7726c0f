package clampwise.calc;

import java.util.Arrays;
import java.util.Collection;
import java.util.stream.LongStream;

/** Where the seams, ribs or crests of a plane lie along the eave. */
public sealed interface SeamPositions {

  /**
   * The seams within a range, its ends included.
   *
   * @param fromM [m]
   * @param toM [m]
   * @return their places from low to high [m]
   */
  double[] within(double fromM, double toM);

  /** Seams without end at one pitch; one of them lies at {@code firstM}. */
  static SeamPositions nominal(double firstM, double pitchM) {
    return new Nominal(firstM, pitchM);
  }

  /** Seams one by one, as surveyed. */
  static SeamPositions surveyed(Collection<Double> placesM) {
    return new Surveyed(placesM.stream().mapToDouble(Snap::m).sorted().toArray());
  }

  /** Seams at a pitch. */
  record Nominal(double firstM, double pitchM) implements SeamPositions {

    public Nominal {
      if (!(pitchM > 0)) {
        throw new IllegalArgumentException("pitch must be positive: " + pitchM);
      }
    }

    @Override
    public double[] within(double fromM, double toM) {
      long first = (long) Math.floor((fromM - firstM) / pitchM);
      long last = (long) Math.ceil((toM - firstM) / pitchM);
      return LongStream.rangeClosed(first, last)
          .mapToDouble(n -> Snap.m(firstM + n * pitchM))
          .filter(m -> Snap.m(fromM) <= m && m <= Snap.m(toM))
          .toArray();
    }
  }

  /** Seams as surveyed. */
  final class Surveyed implements SeamPositions {

    private final double[] placesM;

    private Surveyed(double[] placesM) {
      this.placesM = placesM;
    }

    @Override
    public double[] within(double fromM, double toM) {
      int first = firstFrom(Snap.m(fromM));
      int end = first;
      while (end < placesM.length && placesM[end] <= Snap.m(toM)) {
        end++;
      }
      return Arrays.copyOfRange(placesM, first, end);
    }

    private int firstFrom(double fromM) {
      int found = Arrays.binarySearch(placesM, fromM);
      int index = found < 0 ? -found - 1 : found;
      while (index > 0 && placesM[index - 1] >= fromM) {
        index--;
      }
      return index;
    }
  }
}

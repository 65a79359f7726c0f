package clampwise.calculation;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every public calculation. */
public final class Calculations {

  private Calculations() {}

  /** All calculations, in the order in which they are listed. */
  public static List<Calculation> all() {
    return Stream.of(
            WindCalculations.all(),
            SnowCalculations.all(),
            DriftCalculations.all(),
            CombinationCalculations.all(),
            EurocodeCalculations.all(),
            EurocodeSnowCalculations.all(),
            StaticsCalculations.all(),
            ElectricalCalculations.all(),
            AccuracyCalculations.all(),
            TakeoffCalculations.all(),
            DurabilityCalculations.all())
        .flatMap(List::stream)
        .toList();
  }

  /** The calculation of a name. */
  public static Optional<Calculation> find(String name) {
    return all().stream().filter(calculation -> calculation.name().equals(name)).findFirst();
  }
}

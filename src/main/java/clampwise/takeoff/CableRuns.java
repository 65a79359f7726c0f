package clampwise.takeoff;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Cables;
import clampwise.job.Quantity.Length;
import java.util.Optional;

/**
 * The cables under the modules.
 *
 * @param lengthM length of all runs [m]
 * @param from where that length is from, in words
 */
record CableRuns(double lengthM, String from) {

  /** The runs that the job gives; else the leads of the modules of a row run along it. */
  static Outcome<CableRuns> of(Layout layout, Cables cables) {
    Optional<Length> runs = cables.runs();
    if (runs.isPresent()) {
      return new Result<>(new CableRuns(runs.get().m(), "electrical: cables: runs"));
    }
    return layout.incomplete().isEmpty()
        ? new Result<>(new CableRuns(rowsM(layout), "along all rows of modules"))
        : new NotApplicable<>("not all rows of modules could be laid out");
  }

  private static double rowsM(Layout layout) {
    return layout.fields().stream()
        .flatMap(field -> field.modules().stream())
        .mapToDouble(PlacedModule::alongM)
        .sum();
  }
}

package clampwise.facts.loads;

import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import java.util.Optional;

/** Snow on the modules of one field, by the standard of its site. */
interface FieldSnow {

  /** The largest load on a module, on the horizontal projection [Pa]. */
  double planPa(PlacedModule module);

  /** Slope factors of the standard, if it has any. */
  default Optional<SlopeSnow> slopeSnow() {
    return Optional.empty();
  }

  /** The same with all lines from the ground snow on. */
  Term show(PlacedModule module, Work work);
}

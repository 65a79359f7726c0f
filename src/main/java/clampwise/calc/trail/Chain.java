package clampwise.calc.trail;

import java.util.List;

/** How a number was got, from the given values on; worked out when it is asked for. */
@FunctionalInterface
public interface Chain {

  /** All parts of the calculation, in order; the last line of the last one is the number. */
  List<Section> sections();
}

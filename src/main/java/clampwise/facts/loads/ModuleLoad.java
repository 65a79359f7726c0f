package clampwise.facts.loads;

import clampwise.calc.combination.Actions;
import clampwise.calc.combination.Combination;
import clampwise.calc.combination.Combined;
import java.util.List;

/**
 * What acts on a module, and what each combination makes of it, by area of module.
 *
 * @param place where it lies in the wind
 * @param actions dead load, snow and wind [Pa]
 * @param upPa across the roof with wind away from it, for each combination; negative is uplift [Pa]
 * @param downPa across the roof with wind toward it, for each combination [Pa]
 * @param alongPa down the slope, for each combination [Pa]
 */
record ModuleLoad(Place place, Actions actions, double[] upPa, double[] downPa, double[] alongPa) {

  static ModuleLoad of(Place place, Actions actions, List<Combination> combinations) {
    List<Combined> effects =
        combinations.stream().map(combination -> combination.of(actions)).toList();
    return new ModuleLoad(
        place,
        actions,
        effects.stream().mapToDouble(Combined::normalUp).toArray(),
        effects.stream().mapToDouble(Combined::normalDown).toArray(),
        effects.stream().mapToDouble(Combined::alongSlope).toArray());
  }
}

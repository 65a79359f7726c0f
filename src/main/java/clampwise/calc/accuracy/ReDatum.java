package clampwise.calc.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Where a run of modules has to be set from a measured mark again so that each stays within its
 * slack.
 *
 * @param slackM slack of each module of the run, in their order [m]
 * @param stackM how far a module may be off, by its number since the last mark, from 1 [m]
 */
public record ReDatum(List<Double> slackM, IntToDoubleFunction stackM) {

  public ReDatum {
    slackM = List.copyOf(slackM);
  }

  /**
   * The first module that may leave its slack.
   *
   * @param every a mark after every so many modules
   * @return its number, from 1
   */
  public Optional<Integer> firstOut(int every) {
    for (int i = 0; i < slackM.size(); i++) {
      if (stackM.applyAsDouble(i % every + 1) > slackM.get(i)) {
        return Optional.of(i + 1);
      }
    }
    return Optional.empty();
  }

  /**
   * The fewest marks, each as late as it can be: since a module's stack only depends on the last
   * mark before it, no other choice has fewer.
   *
   * @return numbers, from 1, of the modules to set from a mark; none if even a module right behind
   *     a mark may leave its slack
   */
  public Optional<List<Integer>> marks() {
    List<Integer> marks = new ArrayList<>();
    int since = 0;
    for (int i = 0; i < slackM.size(); i++) {
      since++;
      if (stackM.applyAsDouble(since) > slackM.get(i)) {
        if (stackM.applyAsDouble(1) > slackM.get(i)) {
          return Optional.empty();
        }
        marks.add(i + 1);
        since = 1;
      }
    }
    return Optional.of(marks);
  }
}

package clampwise.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts what a matrix planted and found: by rule and kind of job. */
final class Tally {

  /** How often something was planted, and how often found. */
  record Count(int found, int planted) {
    static final Count NONE = new Count(0, 0);

    Count plus(boolean isFound) {
      return new Count(found + (isFound ? 1 : 0), planted + 1);
    }

    Count plus(Count other) {
      return new Count(found + other.found, planted + other.planted);
    }
  }

  private final Map<String, Map<JobKind, Count>> byRule = new TreeMap<>();
  private final List<Trial> trials;

  Tally(List<Trial> trials) {
    this.trials = trials;
    trials.forEach(trial -> trial.planted().forEach(planted -> add(trial, planted)));
  }

  private void add(Trial trial, Planted planted) {
    boolean found = trial.missed().stream().noneMatch(planted.defect()::isNamed);
    byRule
        .computeIfAbsent(planted.defect().rule(), rule -> new HashMap<>())
        .merge(trial.kind(), Count.NONE.plus(found), Count::plus);
  }

  Map<String, Map<JobKind, Count>> byRule() {
    return byRule;
  }

  int planted() {
    return trials.stream().mapToInt(trial -> trial.planted().size()).sum();
  }

  /** Runs of a kind, and errors in them that no planted defect causes. */
  long runs(JobKind kind) {
    return trials.stream().filter(trial -> trial.kind().equals(kind)).count();
  }

  int others(JobKind kind) {
    return trials.stream()
        .filter(trial -> trial.kind().equals(kind))
        .mapToInt(trial -> trial.others().size())
        .sum();
  }
}

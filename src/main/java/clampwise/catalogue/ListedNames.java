package clampwise.catalogue;

import clampwise.job.Job;
import clampwise.job.Named;
import clampwise.job.Text;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Checks lists whose entries stand under the names of other things, such as torques under the names
 * of parts. What stands under a misspelt name is no statement on the thing that was meant.
 */
final class ListedNames {

  private final Set<List<String>> lost = new HashSet<>();

  /**
   * Reports every name of a list that names nothing.
   *
   * @param under keys of the list from the root of the job
   */
  void check(Names known, Named<?> list, String... under) {
    for (Named.Item<?> item : list.all()) {
      check(known, item.name(), under);
    }
  }

  /** Reports a name of a list that names nothing. */
  void check(Names known, Text name, String... under) {
    Optional<String> meant = known.meant(name);
    if (meant.isPresent()) {
      List<String> path = new ArrayList<>(List.of(under));
      path.add(meant.get());
      lost.add(path);
    }
  }

  /** The job without what stands under misspelt names. */
  Job without(Job job) {
    return job.without(lost);
  }
}

package clampwise.policy;

import clampwise.source.Node;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Finds the policy of a job: the policy files in its folder and the folders above, up to the first
 * that says {@code top: yes}, to the root of the git repository, or to the root of the disk.
 */
public final class PolicyFinder {

  /** What a policy file is called. */
  public static final String FILE = "clampwise-policy.yaml";

  private final Optional<Path> named;
  private final Supplier<Collection<String>> rules;
  private final Map<Named, Policy> known = new ConcurrentHashMap<>();

  private PolicyFinder(Optional<Path> named, Supplier<Collection<String>> rules) {
    this.named = named;
    this.rules = rules;
  }

  /** Looks upward from each job. */
  public static PolicyFinder upward(Supplier<Collection<String>> rules) {
    return new PolicyFinder(Optional.empty(), rules);
  }

  /**
   * Takes one file for every job.
   *
   * @param rules ids of the rules that a policy may speak of
   */
  public static PolicyFinder of(Path named, Supplier<Collection<String>> rules) {
    return new PolicyFinder(Optional.of(named), rules);
  }

  /** The same where policies may speak of other rules. */
  public PolicyFinder speakingOf(Supplier<Collection<String>> others) {
    return new PolicyFinder(named, others);
  }

  /** A folder, and whether its policy is named from the root of the disk. */
  private record Named(Path folder, boolean absolute) {}

  /** The policy in force for a job file, which need not exist. */
  public Policy of(Path job) {
    Path folder = folder(job);
    Named asked = new Named(folder, job.isAbsolute());
    Policy policy = known.get(asked);
    if (policy == null) {
      policy = read(folder, job.isAbsolute());
      known.put(asked, policy);
    }
    return policy;
  }

  private static Path folder(Path job) {
    Path parent = job.toAbsolutePath().normalize().getParent();
    return parent == null ? job.toAbsolutePath() : parent;
  }

  private Policy read(Path folder, boolean absolute) {
    if (named.isPresent()) {
      return new PolicyReader(rules.get()).read(List.of(named.get()));
    }
    List<Path> files = files(folder, absolute);
    return files.isEmpty() ? Policy.NONE : new PolicyReader(rules.get()).read(files);
  }

  /** Where policy files may stand for a job, the outermost first; not all of them need exist. */
  public static List<Path> places(Path job) {
    List<Path> places = new ArrayList<>();
    for (Path at = folder(job); at != null; at = at.getParent()) {
      places.add(0, at.resolve(FILE));
      if (Files.exists(at.resolve(".git"))) {
        break;
      }
    }
    return places;
  }

  private static List<Path> files(Path folder, boolean absolute) {
    List<Path> files = new ArrayList<>();
    for (Path at = folder; at != null; at = at.getParent()) {
      Path file = at.resolve(FILE);
      if (Files.exists(file)) {
        files.add(0, absolute ? file : shown(file));
        if (isTop(file)) {
          break;
        }
      }
      if (Files.exists(at.resolve(".git"))) {
        break;
      }
    }
    return files;
  }

  /** As someone at the working folder would name it. */
  private static Path shown(Path file) {
    Path here = Path.of("").toAbsolutePath().normalize();
    return file.getRoot() != null && file.getRoot().equals(here.getRoot())
        ? here.relativize(file)
        : file;
  }

  private static boolean isTop(Path file) {
    return PolicyReader.tree(file)
        .flatMap(tree -> tree.get("top"))
        .filter(node -> node instanceof Node.Scalar says && isYes(says.text()))
        .isPresent();
  }

  private static boolean isYes(String word) {
    return word.equals("yes") || word.equals("true");
  }
}

package clampwise.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Joins the parts of a run; says in plain words why some do not belong together. */
public final class Joining {

  private final List<Part> parts;
  private final List<String> names;

  private Joining(List<Part> parts, List<String> names) {
    this.parts = parts;
    this.names = names;
  }

  /**
   * Parts to be joined.
   *
   * @param names the files they are from, in the same order
   */
  public static Joining of(List<Part> parts, List<String> names) {
    return new Joining(parts, names);
  }

  /**
   * Why they cannot be joined, if they cannot.
   *
   * @param build which build of the program is to join them
   */
  public Optional<String> obstacle(String build) {
    for (int i = 0; i < parts.size(); i++) {
      Optional<String> why = obstacle(i, build);
      if (why.isPresent()) {
        return why;
      }
    }
    return missing();
  }

  private Optional<String> obstacle(int number, String build) {
    Part first = parts.get(0);
    Part part = parts.get(number);
    String name = names.get(number);
    if (!part.build().equals(build)) {
      return Optional.of(name + " was written by another version of clampwise or of Java");
    }
    if (!part.list().equals(first.list()) || part.jobs() != first.jobs()) {
      return Optional.of(name + " is part of another list of jobs than " + names.get(0));
    }
    if (part.share().parts() != first.share().parts()) {
      return Optional.of(
          name
              + " is one of "
              + part.share().parts()
              + " parts, "
              + names.get(0)
              + " one of "
              + first.share().parts());
    }
    if (!part.failOn().equals(first.failOn())) {
      return Optional.of(name + " was made with another --fail-on than " + names.get(0));
    }
    if (!part.ownRules().equals(first.ownRules())) {
      return Optional.of(name + " was made with other own rules than " + names.get(0));
    }
    if (!part.asked().equals(first.asked())) {
      return Optional.of(name + " was made with another --policy or --on than " + names.get(0));
    }
    return doubled(number);
  }

  private Optional<String> doubled(int number) {
    for (int i = 0; i < number; i++) {
      if (parts.get(i).share().equals(parts.get(number).share())) {
        int part = parts.get(i).share().part();
        return Optional.of(names.get(i) + " and " + names.get(number) + " are both part " + part);
      }
    }
    return Optional.empty();
  }

  private Optional<String> missing() {
    int all = parts.get(0).share().parts();
    List<String> missing = new ArrayList<>();
    for (int part = 1; part <= all; part++) {
      if (!has(part)) {
        missing.add(String.valueOf(part));
      }
    }
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (missing.size() == 1 ? "part " : "parts ")
                + String.join(", ", missing)
                + " of "
                + all
                + " missing");
  }

  private boolean has(int part) {
    return parts.stream().anyMatch(one -> one.share().part() == part);
  }

  /** The results of all parts in the order of the list. */
  public List<JobResult> results() {
    JobResult[] all = new JobResult[parts.get(0).jobs()];
    for (Part part : parts) {
      for (int i = 0; i < part.results().size(); i++) {
        all[part.share().place(i)] = part.results().get(i);
      }
    }
    return List.of(all);
  }
}

package clampwise.repository;

import clampwise.source.Problem;
import java.util.Optional;

/**
 * A job to review, or what is to be said in its place.
 *
 * @param name path of the job file, or {@code -} for standard input
 * @param problem why there is no job under the name that was given, if there is none
 */
public record ListedJob(String name, Optional<Problem> problem) {

  static ListedJob of(String name) {
    return new ListedJob(name, Optional.empty());
  }
}

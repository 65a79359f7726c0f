package clampwise.calc;

import java.util.Optional;

/** The result of a calculation, or why its source does not cover the case. */
public sealed interface Outcome<T> {

  /** A result within the range of validity. */
  record Result<T>(T value) implements Outcome<T> {}

  /** Outside the range of validity, with the reason in plain words. */
  record NotApplicable<T>(String reason) implements Outcome<T> {}

  /** The result, if there is one. */
  default Optional<T> result() {
    return this instanceof Result<T> result ? Optional.of(result.value()) : Optional.empty();
  }
}

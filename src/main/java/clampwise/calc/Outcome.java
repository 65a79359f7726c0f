package clampwise.calc;

import java.util.Optional;
import java.util.function.Function;

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

  /** What follows from the result; where there is none, the reason stays. */
  default <R> Outcome<R> then(Function<? super T, Outcome<R>> next) {
    return this instanceof NotApplicable<T> none
        ? new NotApplicable<>(none.reason())
        : next.apply(((Result<T>) this).value());
  }
}

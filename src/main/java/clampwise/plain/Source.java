package clampwise.plain;

import java.util.Iterator;
import java.util.stream.Stream;

/** Where the values of a stream come from. */
interface Source<T> {

  /** Hands the values on in their order; false if the step wanted no more of them. */
  boolean each(Step<? super T> step);

  /** The values of any stream, which is closed after them. */
  static <T> boolean each(Stream<? extends T> stream, Step<? super T> step) {
    if (stream instanceof PlainStream<? extends T> plain) {
      return plain.each(step);
    }
    try (stream) {
      return each(stream.iterator(), step);
    }
  }

  /** The values that are left. */
  static <T> boolean each(Iterator<? extends T> values, Step<? super T> step) {
    while (values.hasNext()) {
      if (!step.take(values.next())) {
        return false;
      }
    }
    return true;
  }
}

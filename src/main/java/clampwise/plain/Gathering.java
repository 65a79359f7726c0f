package clampwise.plain;

import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collector;

/** A collector for one thread: nothing is ever joined. */
record Gathering<T, A, R>(
    Supplier<A> supplier, BiConsumer<A, T> accumulator, Function<A, R> finisher)
    implements Collector<T, A, R> {

  @Override
  public BinaryOperator<A> combiner() {
    return (a, b) -> {
      throw new UnsupportedOperationException("streams here have one thread");
    };
  }

  @Override
  public Set<Characteristics> characteristics() {
    return Set.of();
  }
}

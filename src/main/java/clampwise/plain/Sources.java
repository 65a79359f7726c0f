package clampwise.plain;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where streams begin, as in the Java library. */
public final class Sources {

  private static final PlainStream<?> NOTHING = new PlainStream<>(step -> true);

  private Sources() {}

  @InsteadOf(Collection.class)
  public static <T> Stream<T> stream(Collection<T> values) {
    return new PlainStream<>(
        values instanceof RandomAccess
            ? step -> each((List<T>) values, step)
            : step -> Source.each(values.iterator(), step));
  }

  private static <T> boolean each(List<T> values, Step<? super T> step) {
    boolean wanted = true;
    for (int i = 0; wanted && i < values.size(); i++) {
      wanted = step.take(values.get(i));
    }
    return wanted;
  }

  @InsteadOf(value = Arrays.class, isStatic = true)
  public static <T> Stream<T> stream(T[] values) {
    return stream(Arrays.asList(values));
  }

  @InsteadOf(value = Stream.class, isStatic = true)
  @SafeVarargs
  @SuppressWarnings("varargs")
  public static <T> Stream<T> of(T... values) {
    return stream(values);
  }

  @InsteadOf(value = Stream.class, isStatic = true)
  public static <T> Stream<T> of(T value) {
    return new PlainStream<>(step -> step.take(value));
  }

  @InsteadOf(value = Stream.class, isStatic = true)
  @SuppressWarnings("unchecked")
  public static <T> Stream<T> empty() {
    return (Stream<T>) NOTHING;
  }

  @InsteadOf(Optional.class)
  public static <T> Stream<T> stream(Optional<T> value) {
    return value.isPresent() ? of(value.get()) : empty();
  }

  @InsteadOf(value = Stream.class, isStatic = true)
  public static <T> Stream<T> concat(Stream<? extends T> first, Stream<? extends T> second) {
    return new PlainStream<>(step -> Source.each(first, step) && Source.each(second, step));
  }

  @InsteadOf(value = Function.class, isStatic = true)
  public static <T> Function<T, T> identity() {
    return value -> value;
  }

  @InsteadOf(Predicate.class)
  public static <T> Predicate<T> negate(Predicate<T> one) {
    return value -> !one.test(value);
  }

  @InsteadOf(Predicate.class)
  public static <T> Predicate<T> and(Predicate<T> one, Predicate<? super T> other) {
    return value -> one.test(value) && other.test(value);
  }

  @InsteadOf(Predicate.class)
  public static <T> Predicate<T> or(Predicate<T> one, Predicate<? super T> other) {
    return value -> one.test(value) || other.test(value);
  }
}

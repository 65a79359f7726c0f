package clampwise.plain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.Spliterator;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collector;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** A stream on one thread whose values are pushed from step to step. */
final class PlainStream<T> extends OneThread<T, Stream<T>> implements Stream<T> {
  private final Source<T> source;

  PlainStream(Source<T> source) {
    this.source = source;
  }

  boolean each(Step<? super T> step) {
    return source.each(step);
  }

  /** All values, in a list of their own. */
  List<T> all() {
    List<T> all = new ArrayList<>();
    source.each(all::add);
    return all;
  }

  @Override
  public Stream<T> filter(Predicate<? super T> wanted) {
    return new PlainStream<>(step -> source.each(v -> !wanted.test(v) || step.take(v)));
  }

  @Override
  public <R> Stream<R> map(Function<? super T, ? extends R> function) {
    return mapped(function);
  }

  private <R> PlainStream<R> mapped(Function<? super T, ? extends R> function) {
    return new PlainStream<>(step -> source.each(v -> step.take(function.apply(v))));
  }

  @Override
  public IntStream mapToInt(ToIntFunction<? super T> function) {
    return new PlainInts(mapped(function::applyAsInt));
  }

  @Override
  public LongStream mapToLong(ToLongFunction<? super T> function) {
    return all().stream().mapToLong(function);
  }

  @Override
  public DoubleStream mapToDouble(ToDoubleFunction<? super T> function) {
    return new PlainDoubles(mapped(function::applyAsDouble));
  }

  @Override
  public <R> Stream<R> flatMap(Function<? super T, ? extends Stream<? extends R>> function) {
    return new PlainStream<>(step -> source.each(v -> Source.each(function.apply(v), step)));
  }

  @Override
  public IntStream flatMapToInt(Function<? super T, ? extends IntStream> function) {
    return new PlainInts(
        new PlainStream<>(s -> source.each(v -> Source.each(function.apply(v).boxed(), s))));
  }

  @Override
  public LongStream flatMapToLong(Function<? super T, ? extends LongStream> function) {
    return all().stream().flatMapToLong(function);
  }

  @Override
  public DoubleStream flatMapToDouble(Function<? super T, ? extends DoubleStream> function) {
    return new PlainDoubles(
        new PlainStream<>(s -> source.each(v -> Source.each(function.apply(v).boxed(), s))));
  }

  @Override
  public Stream<T> distinct() {
    return new PlainStream<>(
        step -> {
          Set<T> seen = new HashSet<>();
          return source.each(value -> !seen.add(value) || step.take(value));
        });
  }

  @Override
  public Stream<T> sorted() {
    return sorted(Order.natural());
  }

  @Override
  public Stream<T> sorted(Comparator<? super T> order) {
    return new PlainStream<>(
        step -> {
          List<T> all = all();
          all.sort(order);
          return Source.each(all.iterator(), step);
        });
  }

  @Override
  public Stream<T> peek(Consumer<? super T> action) {
    return new PlainStream<>(
        step ->
            source.each(
                value -> {
                  action.accept(value);
                  return step.take(value);
                }));
  }

  @Override
  public Stream<T> limit(long count) {
    if (count < 0) {
      throw new IllegalArgumentException(Long.toString(count));
    }
    return new PlainStream<>(step -> limited(new Limit<>(count, step), count));
  }

  private boolean limited(Limit<T> limit, long count) {
    if (count > 0) {
      source.each(limit);
    }
    return limit.wanted();
  }

  @Override
  public Stream<T> skip(long count) {
    if (count < 0) {
      throw new IllegalArgumentException(Long.toString(count));
    }
    return new PlainStream<>(
        step -> {
          long[] left = {count};
          return source.each(value -> left[0]-- > 0 || step.take(value));
        });
  }

  @Override
  public void forEach(Consumer<? super T> action) {
    source.each(
        value -> {
          action.accept(value);
          return true;
        });
  }

  @Override
  public void forEachOrdered(Consumer<? super T> action) {
    forEach(action);
  }

  @Override
  public Object[] toArray() {
    return all().toArray();
  }

  @Override
  public <A> A[] toArray(IntFunction<A[]> array) {
    List<T> all = all();
    return all.toArray(array.apply(all.size()));
  }

  @Override
  @SuppressWarnings("unchecked")
  public List<T> toList() {
    List<T> all = all();
    return all.isEmpty() ? List.of() : new PlainList<>((T[]) all.toArray());
  }

  @Override
  public T reduce(T first, BinaryOperator<T> operator) {
    return reduce(first, operator, operator);
  }

  @Override
  public Optional<T> reduce(BinaryOperator<T> operator) {
    return kept(new Kept<>(operator));
  }

  private Optional<T> kept(Kept<T> kept) {
    source.each(kept);
    return Optional.ofNullable(kept.value());
  }

  @Override
  public <U> U reduce(U first, BiFunction<U, ? super T, U> next, BinaryOperator<U> join) {
    U result = first;
    for (T value : all()) {
      result = next.apply(result, value);
    }
    return result;
  }

  @Override
  public <R> R collect(Supplier<R> start, BiConsumer<R, ? super T> add, BiConsumer<R, R> join) {
    R result = start.get();
    forEach(value -> add.accept(result, value));
    return result;
  }

  @Override
  public <R, A> R collect(Collector<? super T, A, R> collector) {
    A container = collector.supplier().get();
    BiConsumer<A, ? super T> add = collector.accumulator();
    forEach(value -> add.accept(container, value));
    return collector.finisher().apply(container);
  }

  @Override
  public Optional<T> min(Comparator<? super T> order) {
    return reduce((a, b) -> order.compare(a, b) <= 0 ? a : b);
  }

  @Override
  public Optional<T> max(Comparator<? super T> order) {
    return reduce((a, b) -> order.compare(a, b) >= 0 ? a : b);
  }

  @Override
  public long count() {
    long[] count = {0};
    forEach(value -> count[0]++);
    return count[0];
  }

  @Override
  public boolean anyMatch(Predicate<? super T> wanted) {
    return !source.each(value -> !wanted.test(value));
  }

  @Override
  public boolean allMatch(Predicate<? super T> wanted) {
    return source.each(wanted::test);
  }

  @Override
  public boolean noneMatch(Predicate<? super T> wanted) {
    return !anyMatch(wanted);
  }

  @Override
  public Optional<T> findFirst() {
    return kept(new Kept<>(null));
  }

  @Override
  public Optional<T> findAny() {
    return findFirst();
  }

  @Override
  public Iterator<T> iterator() {
    return all().iterator();
  }

  @Override
  public Spliterator<T> spliterator() {
    return all().spliterator();
  }

  @Override
  Stream<T> same() {
    return this;
  }

  @Override
  public Stream<T> onClose(Runnable handler) {
    return all().stream().onClose(handler);
  }
}

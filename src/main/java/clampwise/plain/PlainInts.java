package clampwise.plain;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.PrimitiveIterator;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.BiConsumer;
import java.util.function.IntBinaryOperator;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.IntToLongFunction;
import java.util.function.IntUnaryOperator;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** A stream of numbers on one thread. */
final class PlainInts extends OneThread<Integer, IntStream> implements IntStream {
  private final PlainStream<Integer> numbers;

  PlainInts(PlainStream<Integer> numbers) {
    this.numbers = numbers;
  }

  /** The numbers of a part of an array. */
  static IntStream of(int[] numbers, int from, int to) {
    return new PlainInts(
        new PlainStream<>(
            step -> {
              boolean wanted = true;
              for (int i = from; wanted && i < to; i++) {
                wanted = step.take(numbers[i]);
              }
              return wanted;
            }));
  }

  private static IntStream ints(Stream<Integer> numbers) {
    return new PlainInts((PlainStream<Integer>) numbers);
  }

  private <R> PlainStream<R> values(IntFunction<? extends R> function) {
    return new PlainStream<>(step -> numbers.each(value -> step.take(function.apply(value))));
  }

  @Override
  IntStream same() {
    return this;
  }

  @Override
  public IntStream filter(IntPredicate wanted) {
    return ints(numbers.filter(wanted::test));
  }

  @Override
  public IntStream map(IntUnaryOperator function) {
    return ints(values(function::applyAsInt));
  }

  @Override
  public <U> Stream<U> mapToObj(IntFunction<? extends U> function) {
    return values(function);
  }

  @Override
  public DoubleStream mapToDouble(IntToDoubleFunction function) {
    return new PlainDoubles(values(function::applyAsDouble));
  }

  @Override
  public LongStream asLongStream() {
    return IntStream.of(toArray()).asLongStream();
  }

  @Override
  public DoubleStream asDoubleStream() {
    return mapToDouble(value -> value);
  }

  @Override
  public LongStream mapToLong(IntToLongFunction function) {
    return IntStream.of(toArray()).mapToLong(function);
  }

  @Override
  public IntStream flatMap(IntFunction<? extends IntStream> function) {
    return numbers.flatMapToInt(function::apply);
  }

  @Override
  public IntStream distinct() {
    return ints(numbers.distinct());
  }

  @Override
  public IntStream sorted() {
    return ints(numbers.sorted());
  }

  @Override
  public IntStream peek(IntConsumer action) {
    return ints(numbers.peek(action::accept));
  }

  @Override
  public IntStream limit(long count) {
    return ints(numbers.limit(count));
  }

  @Override
  public IntStream skip(long count) {
    return ints(numbers.skip(count));
  }

  @Override
  public IntStream takeWhile(IntPredicate wanted) {
    return new PlainInts(new PlainStream<>(step -> taken(wanted, step)));
  }

  private boolean taken(IntPredicate wanted, Step<? super Integer> step) {
    boolean[] more = {true};
    boolean all = numbers.each(value -> wanted.test(value) && (more[0] = step.take(value)));
    return all || more[0];
  }

  @Override
  public void forEach(IntConsumer action) {
    numbers.forEach(action::accept);
  }

  @Override
  public void forEachOrdered(IntConsumer action) {
    forEach(action);
  }

  @Override
  public int[] toArray() {
    List<Integer> all = numbers.all();
    int[] array = new int[all.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = all.get(i);
    }
    return array;
  }

  @Override
  public int reduce(int first, IntBinaryOperator operator) {
    return numbers.reduce(first, operator::applyAsInt);
  }

  @Override
  public OptionalInt reduce(IntBinaryOperator operator) {
    return optional(numbers.reduce(operator::applyAsInt));
  }

  private static OptionalInt optional(Optional<Integer> number) {
    return number.isPresent() ? OptionalInt.of(number.get()) : OptionalInt.empty();
  }

  @Override
  public <R> R collect(Supplier<R> start, ObjIntConsumer<R> add, BiConsumer<R, R> join) {
    return numbers.collect(start, add::accept, join);
  }

  @Override
  public int sum() {
    return reduce(0, Integer::sum);
  }

  @Override
  public OptionalInt min() {
    return reduce(Math::min);
  }

  @Override
  public OptionalInt max() {
    return reduce(Math::max);
  }

  @Override
  public long count() {
    return numbers.count();
  }

  @Override
  public OptionalDouble average() {
    IntSummaryStatistics all = summaryStatistics();
    return all.getCount() == 0 ? OptionalDouble.empty() : OptionalDouble.of(all.getAverage());
  }

  @Override
  public IntSummaryStatistics summaryStatistics() {
    IntSummaryStatistics all = new IntSummaryStatistics();
    forEach(all);
    return all;
  }

  @Override
  public boolean anyMatch(IntPredicate wanted) {
    return numbers.anyMatch(wanted::test);
  }

  @Override
  public boolean allMatch(IntPredicate wanted) {
    return numbers.allMatch(wanted::test);
  }

  @Override
  public boolean noneMatch(IntPredicate wanted) {
    return numbers.noneMatch(wanted::test);
  }

  @Override
  public OptionalInt findFirst() {
    return optional(numbers.findFirst());
  }

  @Override
  public OptionalInt findAny() {
    return findFirst();
  }

  @Override
  public Stream<Integer> boxed() {
    return numbers;
  }

  @Override
  public PrimitiveIterator.OfInt iterator() {
    return Spliterators.iterator(spliterator());
  }

  @Override
  public Spliterator.OfInt spliterator() {
    return Spliterators.spliterator(toArray(), Spliterator.ORDERED);
  }

  @Override
  public IntStream onClose(Runnable handler) {
    return IntStream.of(toArray()).onClose(handler);
  }
}

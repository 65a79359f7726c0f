package clampwise.plain;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PrimitiveIterator;
import java.util.Spliterator;
import java.util.Spliterators;
import java.util.function.BiConsumer;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleConsumer;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.DoubleToIntFunction;
import java.util.function.DoubleToLongFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ObjDoubleConsumer;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** A stream of numbers on one thread. */
final class PlainDoubles extends OneThread<Double, DoubleStream> implements DoubleStream {
  private final PlainStream<Double> numbers;

  PlainDoubles(PlainStream<Double> numbers) {
    this.numbers = numbers;
  }

  /** The numbers of a part of an array. */
  static DoubleStream of(double[] numbers, int from, int to) {
    return new PlainDoubles(
        new PlainStream<>(
            step -> {
              boolean wanted = true;
              for (int i = from; wanted && i < to; i++) {
                wanted = step.take(numbers[i]);
              }
              return wanted;
            }));
  }

  private static DoubleStream doubles(Stream<Double> numbers) {
    return new PlainDoubles((PlainStream<Double>) numbers);
  }

  private <R> PlainStream<R> values(DoubleFunction<? extends R> function) {
    return new PlainStream<>(step -> numbers.each(value -> step.take(function.apply(value))));
  }

  @Override
  DoubleStream same() {
    return this;
  }

  @Override
  public DoubleStream filter(DoublePredicate wanted) {
    return doubles(numbers.filter(wanted::test));
  }

  @Override
  public DoubleStream map(DoubleUnaryOperator function) {
    return doubles(values(function::applyAsDouble));
  }

  @Override
  public <U> Stream<U> mapToObj(DoubleFunction<? extends U> function) {
    return values(function);
  }

  @Override
  public IntStream mapToInt(DoubleToIntFunction function) {
    return new PlainInts(values(function::applyAsInt));
  }

  @Override
  public LongStream mapToLong(DoubleToLongFunction function) {
    return DoubleStream.of(toArray()).mapToLong(function);
  }

  @Override
  public DoubleStream flatMap(DoubleFunction<? extends DoubleStream> function) {
    return numbers.flatMapToDouble(function::apply);
  }

  @Override
  public DoubleStream distinct() {
    return doubles(numbers.distinct());
  }

  @Override
  public DoubleStream sorted() {
    return doubles(numbers.sorted());
  }

  @Override
  public DoubleStream peek(DoubleConsumer action) {
    return doubles(numbers.peek(action::accept));
  }

  @Override
  public DoubleStream limit(long count) {
    return doubles(numbers.limit(count));
  }

  @Override
  public DoubleStream skip(long count) {
    return doubles(numbers.skip(count));
  }

  @Override
  public void forEach(DoubleConsumer action) {
    numbers.forEach(action::accept);
  }

  @Override
  public void forEachOrdered(DoubleConsumer action) {
    forEach(action);
  }

  @Override
  public double[] toArray() {
    List<Double> all = numbers.all();
    double[] array = new double[all.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = all.get(i);
    }
    return array;
  }

  @Override
  public double reduce(double first, DoubleBinaryOperator operator) {
    return numbers.reduce(first, operator::applyAsDouble);
  }

  @Override
  public OptionalDouble reduce(DoubleBinaryOperator operator) {
    return optional(numbers.reduce(operator::applyAsDouble));
  }

  private static OptionalDouble optional(Optional<Double> number) {
    return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
  }

  @Override
  public <R> R collect(Supplier<R> start, ObjDoubleConsumer<R> add, BiConsumer<R, R> join) {
    return numbers.collect(start, add::accept, join);
  }

  @Override
  public double sum() {
    return summaryStatistics().getSum();
  }

  @Override
  public OptionalDouble min() {
    return reduce(Math::min);
  }

  @Override
  public OptionalDouble max() {
    return reduce(Math::max);
  }

  @Override
  public long count() {
    return numbers.count();
  }

  @Override
  public OptionalDouble average() {
    DoubleSummaryStatistics all = summaryStatistics();
    return all.getCount() == 0 ? OptionalDouble.empty() : OptionalDouble.of(all.getAverage());
  }

  @Override
  public DoubleSummaryStatistics summaryStatistics() {
    DoubleSummaryStatistics all = new DoubleSummaryStatistics();
    forEach(all);
    return all;
  }

  @Override
  public boolean anyMatch(DoublePredicate wanted) {
    return numbers.anyMatch(wanted::test);
  }

  @Override
  public boolean allMatch(DoublePredicate wanted) {
    return numbers.allMatch(wanted::test);
  }

  @Override
  public boolean noneMatch(DoublePredicate wanted) {
    return numbers.noneMatch(wanted::test);
  }

  @Override
  public OptionalDouble findFirst() {
    return optional(numbers.findFirst());
  }

  @Override
  public OptionalDouble findAny() {
    return findFirst();
  }

  @Override
  public Stream<Double> boxed() {
    return numbers;
  }

  @Override
  public PrimitiveIterator.OfDouble iterator() {
    return Spliterators.iterator(spliterator());
  }

  @Override
  public Spliterator.OfDouble spliterator() {
    return Spliterators.spliterator(toArray(), Spliterator.ORDERED);
  }

  @Override
  public DoubleStream onClose(Runnable handler) {
    return DoubleStream.of(toArray()).onClose(handler);
  }
}

package clampwise.plain;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where streams of numbers begin, as in the Java library. */
public final class Numbers {

  private Numbers() {}

  @InsteadOf(value = Arrays.class, isStatic = true)
  public static DoubleStream stream(double[] numbers) {
    return PlainDoubles.of(numbers, 0, numbers.length);
  }

  @InsteadOf(value = Arrays.class, isStatic = true)
  public static IntStream stream(int[] numbers) {
    return PlainInts.of(numbers, 0, numbers.length);
  }

  @InsteadOf(OptionalDouble.class)
  public static DoubleStream stream(OptionalDouble number) {
    return number.isPresent() ? of(number.getAsDouble()) : stream(new double[0]);
  }

  @InsteadOf(String.class)
  public static IntStream chars(String text) {
    return range(0, text.length()).map(text::charAt);
  }

  @InsteadOf(value = DoubleStream.class, isStatic = true)
  public static DoubleStream of(double... numbers) {
    return stream(numbers);
  }

  @InsteadOf(value = DoubleStream.class, isStatic = true)
  public static DoubleStream of(double number) {
    return stream(new double[] {number});
  }

  @InsteadOf(value = DoubleStream.class, isStatic = true)
  public static DoubleStream concat(DoubleStream first, DoubleStream second) {
    Stream<Double> both = Sources.concat(first.boxed(), second.boxed());
    return new PlainDoubles((PlainStream<Double>) both);
  }

  @InsteadOf(value = IntStream.class, isStatic = true)
  public static IntStream range(int from, int to) {
    return new PlainInts(
        new PlainStream<>(
            step -> {
              boolean wanted = true;
              for (int i = from; wanted && i < to; i++) {
                wanted = step.take(i);
              }
              return wanted;
            }));
  }

  @InsteadOf(value = IntStream.class, isStatic = true)
  public static IntStream rangeClosed(int from, int to) {
    if (to == Integer.MAX_VALUE) {
      throw new IllegalArgumentException("a range without end");
    }
    return range(from, to + 1);
  }
}

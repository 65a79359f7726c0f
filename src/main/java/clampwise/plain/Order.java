package clampwise.plain;

import java.util.Comparator;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/** Orders of values, as {@link Comparator} makes them. */
public final class Order {

  private Order() {}

  /** Of values that have an order of their own. */
  @SuppressWarnings({"unchecked", "rawtypes"})
  static <T> Comparator<T> natural() {
    return (Comparator) Comparator.naturalOrder();
  }

  @InsteadOf(value = Comparator.class, isStatic = true)
  public static <T, U extends Comparable<? super U>> Comparator<T> comparing(
      Function<? super T, ? extends U> key) {
    return (a, b) -> key.apply(a).compareTo(key.apply(b));
  }

  @InsteadOf(value = Comparator.class, isStatic = true)
  public static <T, U> Comparator<T> comparing(
      Function<? super T, ? extends U> key, Comparator<? super U> order) {
    return (a, b) -> order.compare(key.apply(a), key.apply(b));
  }

  @InsteadOf(value = Comparator.class, isStatic = true)
  public static <T> Comparator<T> comparingDouble(ToDoubleFunction<? super T> key) {
    return (a, b) -> Double.compare(key.applyAsDouble(a), key.applyAsDouble(b));
  }

  @InsteadOf(value = Comparator.class, isStatic = true)
  public static <T> Comparator<T> comparingInt(ToIntFunction<? super T> key) {
    return (a, b) -> Integer.compare(key.applyAsInt(a), key.applyAsInt(b));
  }

  @InsteadOf(Comparator.class)
  public static <T> Comparator<T> thenComparing(Comparator<T> first, Comparator<? super T> second) {
    return (a, b) -> {
      int result = first.compare(a, b);
      return result == 0 ? second.compare(a, b) : result;
    };
  }

  @InsteadOf(Comparator.class)
  public static <T, U extends Comparable<? super U>> Comparator<T> thenComparing(
      Comparator<T> first, Function<? super T, ? extends U> key) {
    return thenComparing(first, comparing(key));
  }

  @InsteadOf(Comparator.class)
  public static <T, U> Comparator<T> thenComparing(
      Comparator<T> first, Function<? super T, ? extends U> key, Comparator<? super U> order) {
    return thenComparing(first, comparing(key, order));
  }

  @InsteadOf(Comparator.class)
  public static <T> Comparator<T> thenComparingDouble(
      Comparator<T> first, ToDoubleFunction<? super T> key) {
    return thenComparing(first, comparingDouble(key));
  }

  @InsteadOf(Comparator.class)
  public static <T> Comparator<T> thenComparingInt(
      Comparator<T> first, ToIntFunction<? super T> key) {
    return thenComparing(first, comparingInt(key));
  }

  @InsteadOf(value = Map.Entry.class, isStatic = true)
  public static <K extends Comparable<? super K>, V> Comparator<Map.Entry<K, V>> comparingByKey() {
    return (a, b) -> a.getKey().compareTo(b.getKey());
  }

  @InsteadOf(value = Map.Entry.class, isStatic = true)
  public static <K, V extends Comparable<? super V>>
      Comparator<Map.Entry<K, V>> comparingByValue() {
    return (a, b) -> a.getValue().compareTo(b.getValue());
  }
}

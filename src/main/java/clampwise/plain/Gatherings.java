package clampwise.plain;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/** What is made of all values of a stream, as {@link Collectors} makes it. */
public final class Gatherings {

  private Gatherings() {}

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T, C extends Collection<T>> Collector<T, ?, C> toCollection(Supplier<C> start) {
    return new Gathering<T, C, C>(start, Collection::add, all -> all);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T> Collector<T, ?, List<T>> toList() {
    return toCollection(ArrayList::new);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T> Collector<T, ?, Set<T>> toSet() {
    return toCollection(HashSet::new);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static Collector<CharSequence, ?, String> joining(CharSequence between) {
    return joining(between, "", "");
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static Collector<CharSequence, ?, String> joining() {
    return joining("");
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static Collector<CharSequence, ?, String> joining(
      CharSequence between, CharSequence before, CharSequence after) {
    return new Gathering<CharSequence, StringJoiner, String>(
        () -> new StringJoiner(between, before, after), StringJoiner::add, StringJoiner::toString);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T> Collector<T, ?, Long> counting() {
    return new Gathering<T, long[], Long>(
        () -> new long[1], (count, value) -> count[0]++, count -> count[0]);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T, K> Collector<T, ?, Map<K, List<T>>> groupingBy(
      Function<? super T, ? extends K> key) {
    return groupingBy(key, toList());
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T, K, A, D> Collector<T, ?, Map<K, D>> groupingBy(
      Function<? super T, ? extends K> key, Collector<? super T, A, D> inner) {
    return groupingBy(key, HashMap::new, inner);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  @SuppressWarnings("unchecked")
  public static <T, K, D, A, M extends Map<K, D>> Collector<T, ?, M> groupingBy(
      Function<? super T, ? extends K> key, Supplier<M> start, Collector<? super T, A, D> inner) {
    return new Gathering<T, Map<K, A>, M>(
        (Supplier<Map<K, A>>) start,
        (groups, value) ->
            inner
                .accumulator()
                .accept(
                    groups.computeIfAbsent(key.apply(value), none -> inner.supplier().get()),
                    value),
        groups -> {
          groups.replaceAll((name, group) -> (A) inner.finisher().apply(group));
          return (M) groups;
        });
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T, K, U> Collector<T, ?, Map<K, U>> toMap(
      Function<? super T, ? extends K> key, Function<? super T, ? extends U> value) {
    return new Gathering<T, Map<K, U>, Map<K, U>>(
        HashMap::new,
        (map, each) -> {
          if (map.putIfAbsent(key.apply(each), value.apply(each)) != null) {
            throw new IllegalStateException("two values for the key " + key.apply(each));
          }
        },
        map -> map);
  }

  @InsteadOf(value = Collectors.class, isStatic = true)
  public static <T, K, U, M extends Map<K, U>> Collector<T, ?, M> toMap(
      Function<? super T, ? extends K> key,
      Function<? super T, ? extends U> value,
      BinaryOperator<U> join,
      Supplier<M> start) {
    return new Gathering<T, M, M>(
        start, (map, each) -> map.merge(key.apply(each), value.apply(each), join), map -> map);
  }
}

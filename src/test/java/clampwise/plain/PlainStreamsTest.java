package clampwise.plain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Our streams do what those of the Java library do: both run the same steps on the same values. */
class PlainStreamsTest {

  private static final List<UnaryOperator<Stream<Integer>>> STEPS =
      List.of(
          s -> s.filter(n -> n % 3 != 0),
          s -> s.map(n -> n * 7 % 11),
          s -> s.flatMap(n -> IntStream.range(0, n % 4).boxed()),
          s -> s.distinct(),
          s -> s.sorted(),
          s -> s.sorted(Comparator.reverseOrder()),
          s -> s.limit(5),
          s -> s.skip(2),
          s -> s.peek(n -> {}),
          s -> s.mapToInt(n -> n + 1).filter(n -> n > 2).boxed(),
          s -> s.mapToInt(n -> n).sorted().distinct().limit(6).mapToObj(n -> n - 1),
          s -> s.mapToDouble(n -> n / 2.0).map(Math::floor).boxed().map(Double::intValue),
          s -> s.mapToInt(n -> n).takeWhile(n -> n < 9).boxed(),
          s -> s.flatMapToInt(n -> IntStream.of(n, n)).boxed(),
          s -> s.mapToInt(n -> n).asDoubleStream().mapToInt(n -> (int) n).skip(1).boxed());

  private static final List<Function<Stream<Integer>, Object>> ENDS =
      List.of(
          Stream::toList,
          Stream::count,
          Stream::findFirst,
          s -> List.of(s.toArray()),
          s -> List.of(s.toArray(Integer[]::new)),
          s -> s.anyMatch(n -> n == 4),
          s -> s.allMatch(n -> n < 9),
          s -> s.noneMatch(n -> n == 4),
          s -> s.min(Comparator.naturalOrder()),
          s -> s.max(Comparator.comparingInt(n -> n % 5)),
          s -> s.min(Comparator.comparingInt(n -> n % 5)),
          s -> s.reduce(Integer::sum),
          s -> s.reduce(1, (a, b) -> a * 31 + b),
          s -> s.reduce("", (text, n) -> text + n, String::concat),
          s -> s.collect(Collectors.toSet()),
          s -> s.collect(ArrayList::new, List::add, List::addAll),
          s -> s.mapToInt(n -> n).sum(),
          s -> s.mapToInt(n -> n).max(),
          s -> s.mapToInt(n -> n).min(),
          s -> s.mapToInt(n -> n).average(),
          s -> s.mapToInt(n -> n).summaryStatistics().toString(),
          s -> s.mapToInt(n -> n).anyMatch(n -> n == 3),
          s -> s.mapToInt(n -> n).noneMatch(n -> n == 3),
          s -> s.mapToInt(n -> n).findFirst(),
          s -> s.mapToLong(n -> n).sum(),
          s -> s.mapToDouble(n -> n * 0.1).sum(),
          s -> s.mapToDouble(n -> n * 0.1).max(),
          s -> s.mapToDouble(n -> n * 0.1).min(),
          s -> s.mapToDouble(n -> n * 0.1).average(),
          s -> s.mapToDouble(n -> n).reduce(0, Math::max),
          s -> s.mapToDouble(n -> n * 0.1).sorted().boxed().toList(),
          s -> s.mapToDouble(n -> n).allMatch(n -> n < 9),
          s -> Arrays.toString(s.mapToDouble(n -> n).toArray()));

  @TestFactory
  Stream<DynamicTest> theSameStepsGiveTheSame() {
    return IntStream.range(0, 400)
        .mapToObj(seed -> DynamicTest.dynamicTest("seed " + seed, () -> compare(seed)));
  }

  private static void compare(int seed) {
    Random random = new Random(seed);
    List<Integer> values = random.ints(random.nextInt(12), 0, 20).boxed().toList();
    Stream<Integer> plain = Sources.stream(values);
    Stream<Integer> usual = values.stream();
    for (int i = random.nextInt(5); i > 0; i--) {
      UnaryOperator<Stream<Integer>> step = STEPS.get(random.nextInt(STEPS.size()));
      plain = step.apply(plain);
      usual = step.apply(usual);
    }
    Function<Stream<Integer>, Object> end = ENDS.get(seed % ENDS.size());
    assertThat(plain).isInstanceOf(PlainStream.class);
    assertThat(end.apply(plain)).isEqualTo(end.apply(usual));
  }

  @Test
  void noMoreIsTakenThanWanted() {
    List<Integer> asked = new ArrayList<>();
    Stream<Integer> noting = Sources.of(1, 2, 3, 4).peek(asked::add);

    assertThat(noting.limit(2).toList()).containsExactly(1, 2);
    assertThat(asked).containsExactly(1, 2);
    assertThat(Sources.concat(Sources.of(1, 2, 3).limit(1), Sources.of(9)).toList())
        .containsExactly(1, 9);
    assertThat(Sources.of(3).flatMap(n -> Stream.iterate(n, i -> i + 1)).findFirst()).contains(3);
  }

  @Test
  void streamsOfTheLibraryMixWithOurs() {
    assertThat(Sources.concat(Stream.of(1), Sources.of(2, 3)).toList()).containsExactly(1, 2, 3);
    assertThat(Stream.concat(Sources.of(1), Stream.of(2)).toList()).containsExactly(1, 2);
    assertThat(Numbers.concat(DoubleStream.of(1), Numbers.of(2.0, 3.0)).sum()).isEqualTo(6);
  }

  @Test
  void aListOfAStreamStaysAsItIs() {
    List<String> list = Sources.of("a", "b").toList();

    assertThat(list).isEqualTo(List.of("a", "b")).hasSameHashCodeAs(List.of("a", "b"));
    assertThatThrownBy(() -> list.add("c")).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> list.set(0, "c")).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> list.remove(0)).isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void whatIsEmptyHasNothing() {
    assertThat(Sources.stream(Optional.empty()).toList()).isEmpty();
    assertThat(Sources.stream(Optional.of("a")).toList()).containsExactly("a");
    assertThat(Sources.<String>empty().findAny()).isEmpty();
    assertThat(Numbers.chars("a1").allMatch(c -> c == 'a')).isFalse();
    assertThat(Numbers.rangeClosed(1, 3).toArray()).containsExactly(1, 2, 3);
  }

  @Test
  void collectorsMakeWhatThoseOfTheLibraryMake() {
    List<String> words = List.of("seam", "rib", "clip", "lug", "seam");
    Function<String, Integer> length = String::length;

    assertSame(words, Gatherings.joining(", "), Collectors.joining(", "));
    assertSame(words, Gatherings.joining(), Collectors.joining());
    assertSame(words, Gatherings.joining("-", "<", ">"), Collectors.joining("-", "<", ">"));
    assertSame(words, Gatherings.toSet(), Collectors.toSet());
    assertSame(words, Gatherings.toList(), Collectors.toList());
    assertSame(words, Gatherings.counting(), Collectors.counting());
    assertSame(words, Gatherings.groupingBy(length), Collectors.groupingBy(length));
    assertSame(
        words,
        Gatherings.groupingBy(length, TreeMap::new, Gatherings.counting()),
        Collectors.groupingBy(length, TreeMap::new, Collectors.counting()));
    assertSame(
        words,
        Gatherings.toMap(length, w -> w, (a, b) -> a + b, TreeMap::new),
        Collectors.toMap(length, w -> w, (a, b) -> a + b, TreeMap::new));
    assertThatThrownBy(() -> words.stream().collect(Gatherings.toMap(length, w -> w)))
        .isInstanceOf(IllegalStateException.class);
  }

  private static <T, R> void assertSame(
      List<T> values,
      java.util.stream.Collector<? super T, ?, R> ours,
      java.util.stream.Collector<? super T, ?, R> usual) {
    assertThat(Sources.stream(values).collect(ours)).isEqualTo(values.stream().collect(usual));
  }

  @Test
  void ordersAreThoseOfTheLibrary() {
    List<String> words = List.of("seam", "rib", "clip", "lug", "batten");
    Comparator<String> ours =
        Order.thenComparing(Order.comparingInt(String::length), Comparator.reverseOrder());
    Comparator<String> usual =
        Comparator.comparingInt(String::length).thenComparing(Comparator.reverseOrder());

    assertThat(words.stream().sorted(ours)).isEqualTo(words.stream().sorted(usual).toList());
    assertThat(words.stream().sorted(Order.comparingDouble(w -> -w.length())).toList())
        .isEqualTo(words.stream().sorted(Comparator.comparingDouble(w -> -w.length())).toList());
    assertThat(words.stream().sorted(Order.comparing(w -> w, Comparator.reverseOrder())).toList())
        .isEqualTo(words.stream().sorted(Comparator.reverseOrder()).toList());
  }
}

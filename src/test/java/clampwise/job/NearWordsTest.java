package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.Span;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word of every fixed list of the job file, with the slips that fingers make. */
class NearWordsTest {

  private static final int SHORTEST = 4;

  /** All fixed lists that some key of a job takes a word of. */
  static Stream<Class<?>> lists() {
    Set<Class<?>> lists = new LinkedHashSet<>();
    collect(Job.class, lists, new HashSet<>());
    return lists.stream();
  }

  @ParameterizedTest
  @MethodSource("lists")
  void aSlipIsReportedWithTheWordThatWasMeant(Class<?> list) {
    for (Object constant : list.getEnumConstants()) {
      String word = Choice.word((Enum<?>) constant);
      if (word.length() >= SHORTEST && !hasTwin(word, list)) {
        slips(word).forEach(slip -> assertThat(nearest(slip, list)).as(slip).containsExactly(word));
      }
      other(word).forEach(same -> assertThat(nearest(same, list)).as(same).containsExactly(word));
    }
  }

  /** Words such as {@code acm} and {@code acn}, between which one slip may lie. */
  private static boolean hasTwin(String word, Class<?> list) {
    return Stream.of(list.getEnumConstants())
        .map(other -> Choice.word((Enum<?>) other))
        .anyMatch(other -> !other.equals(word) && near(other, word));
  }

  private static boolean near(String a, String b) {
    String one = a.replaceAll("[0-9]", "0");
    String other = b.replaceAll("[0-9]", "0");
    return one.equals(other) || slips(a).stream().anyMatch(slips(b)::contains);
  }

  private static List<String> slips(String word) {
    int middle = word.length() / 2;
    List<String> slips = new ArrayList<>();
    slips.add(word.substring(0, middle) + word.substring(middle + 1));
    slips.add(word.substring(0, middle) + "x" + word.substring(middle));
    slips.add(word + word.charAt(word.length() - 1));
    return slips;
  }

  /** The same word as other programs would have it. */
  private static Stream<String> other(String word) {
    String upper = word.toUpperCase(Locale.ROOT);
    String capitals = word.equals(upper) ? word.toLowerCase(Locale.ROOT) : upper;
    return Stream.of(capitals, word.replace('-', '_'), word.replace('-', ' '))
        .filter(same -> !same.equals(word));
  }

  private static List<String> nearest(String written, Class<?> list) {
    Problems problems = new Problems();
    Node.Scalar node = new Node.Scalar(written, false, Span.startOf("job"));
    choice(list).reader().read(node, "key", Reading.plain(problems));
    return problems.sorted().stream().flatMap(problem -> problem.nearest().stream()).toList();
  }

  @SuppressWarnings({"unchecked", "rawtypes"}) // the list is an enum, as its key says
  private static ValueDeserializer<?> choice(Class<?> list) {
    return Words.choice((Class) list);
  }

  private static void collect(Type type, Set<Class<?>> lists, Set<Type> seen) {
    if (!seen.add(type)) {
      return;
    }
    if (type instanceof ParameterizedType generic) {
      Type item = generic.getActualTypeArguments()[0];
      if (generic.getRawType() == Choice.class) {
        lists.add((Class<?>) item);
      } else {
        collect(item, lists, seen);
      }
    } else if (type instanceof Class<?> plain && plain.isRecord()) {
      Shape.of(plain).slots().forEach(slot -> collect(slot.value(), lists, seen));
    }
  }
}

package clampwise.packaging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Lambdas, method references, records and joined texts of every shape that the program uses. */
public class Sample implements Supplier<String> {

  /** A record with a component of every kind. */
  public record Mixed(
      boolean flag, byte small, char letter, short number, int whole, long big, Part part) {}

  /** A record in a record. */
  public record Part(float narrow, double wide, String text, int[] list) {}

  /** A record without components. */
  public record Nothing() {}

  private final String prefix = "p";

  @Override
  public String get() {
    List<String> lines = new ArrayList<>();
    lines.addAll(references());
    lines.addAll(lambdas());
    lines.addAll(records());
    return String.join("\n", lines);
  }

  private List<String> references() {
    Function<String, Integer> size = String::length;
    Function<String, StringBuilder> made = StringBuilder::new;
    IntFunction<int[]> array = int[]::new;
    ToLongFunction<Integer> widened = Integer::intValue;
    BiFunction<String, String, String> receiver = String::concat;
    Function<String, String> own = this::prefixed;
    Function<Object, String> text = String::valueOf;
    Supplier<List<String>> list = ArrayList::new;
    DoubleUnaryOperator root = Math::sqrt;
    Comparable<String> captured = "b"::compareTo;
    return List.of(
        String.valueOf(size.apply("four")),
        made.apply("built").toString(),
        String.valueOf(array.apply(3).length),
        String.valueOf(widened.applyAsLong(7)),
        receiver.apply("a", "b"),
        own.apply("x"),
        text.apply(1.5),
        list.get().toString(),
        String.valueOf(root.applyAsDouble(9)),
        String.valueOf(captured.compareTo("a")),
        Stream.of("q", "r").map(super.getClass().getSimpleName()::concat).toList().toString());
  }

  private List<String> lambdas() {
    long big = 40_000_000_000L;
    double wide = 2.5;
    byte small = 3;
    Runnable nothing = () -> prefixed("ignored");
    nothing.run();
    return Arrays.asList(
        IntStream.range(0, 3).mapToObj(i -> prefix + i + big + wide + small).toList().toString(),
        Stream.of(3, 1, 2).sorted((a, b) -> b - a).map(i -> i * wide).toList().toString(),
        Stream.of("a", "bb").collect(Collectors.toMap(s -> s, String::length)).toString(),
        new Inner().twice("y"),
        Nested.shout("z"));
  }

  private static List<String> records() {
    Part part = new Part(1.5f, 2.5, "t", new int[0]);
    Mixed one = new Mixed(true, (byte) 1, 'c', (short) 2, 3, 4L, part);
    Mixed same = new Mixed(true, (byte) 1, 'c', (short) 2, 3, 4L, part);
    Mixed other = new Mixed(true, (byte) 1, 'c', (short) 2, 9, 4L, part);
    return List.of(
        String.valueOf(one.equals(same)),
        String.valueOf(one.equals(other)),
        String.valueOf(one.equals("text")),
        String.valueOf(one.hashCode() == same.hashCode()),
        String.valueOf(new Part(1, 2, "x", new int[0]).toString().startsWith("Part[narrow=1.0, ")),
        new Nothing().toString() + new Nothing().hashCode(),
        new Mixed(false, (byte) -1, 'd', (short) -2, -3, -4L, part).toString().split("part=")[0],
        "joined " + one.small() + one.letter() + one.flag() + (Object) null + '\t' + part.wide());
  }

  private String prefixed(String text) {
    return prefix + text;
  }

  private final class Inner {
    String twice(String text) {
      Function<String, String> each = Sample.this::prefixed;
      return each.andThen(s -> prefixed(s)).apply(text);
    }
  }

  private static final class Nested {
    static String shout(String text) {
      Supplier<String> loud = () -> text + "!";
      return loud.get();
    }
  }
}

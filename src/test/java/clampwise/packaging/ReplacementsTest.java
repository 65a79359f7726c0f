package clampwise.packaging;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.plain.Gatherings;
import clampwise.plain.InsteadOf;
import clampwise.plain.Numbers;
import clampwise.plain.Order;
import clampwise.plain.Sources;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.snakeyaml.engine.v2.scanner.ScannerImpl;

class ReplacementsTest {

  /** Uses streams of every kind of source. */
  public static final class Streaming implements Supplier<String> {
    @Override
    public String get() {
      List<String> words = List.of("seam", "rib", "clip");
      return Stream.concat(words.stream(), Optional.of("lug").stream())
          .filter(word -> !word.equals("rib"))
          .collect(Collectors.joining(" "));
    }
  }

  @TestFactory
  Stream<DynamicTest> everyReplacementTakesThePlaceOfAMethodThatExists() {
    return Stream.of(Gatherings.class, Numbers.class, Order.class, Sources.class)
        .flatMap(type -> Arrays.stream(type.getMethods()))
        .filter(method -> method.isAnnotationPresent(InsteadOf.class))
        .map(method -> DynamicTest.dynamicTest(method.toString(), () -> assertReplaces(method)));
  }

  private static void assertReplaces(Method ours) throws NoSuchMethodException {
    InsteadOf replaced = ours.getAnnotation(InsteadOf.class);
    Class<?>[] types = ours.getParameterTypes();
    Class<?>[] asked = replaced.isStatic() ? types : Arrays.copyOfRange(types, 1, types.length);
    Method usual = replaced.value().getMethod(ours.getName(), asked);

    assertThat(usual.getReturnType()).isEqualTo(ours.getReturnType());
    assertThat(Modifier.isStatic(usual.getModifiers())).isEqualTo(replaced.isStatic());
  }

  @Test
  void aClassWithPlainStreamsDoesTheSame() throws Exception {
    String name = Streaming.class.getName().replace('.', '/');
    Map<String, byte[]> changed = Replacements.of(Map.of(name, bytes(Streaming.class)));
    Object streaming =
        new BytesLoader(changed)
            .loadClass(Streaming.class.getName())
            .getDeclaredConstructor()
            .newInstance();

    assertThat(changed).containsKey(name);
    assertThat(((Supplier<?>) streaming).get()).isEqualTo("seam clip lug");
    assertThat(text(changed.get(name))).contains("clampwise/plain/Sources");
  }

  @Test
  void theYamlScannerCompilesItsPatternLate() throws IOException {
    byte[] scanner = bytes(ScannerImpl.class);
    byte[] changed =
        LatePatterns.of(Map.of(LatePatterns.SCANNER, scanner)).get(LatePatterns.SCANNER);

    assertThat(text(scanner)).contains("NOT_HEXA");
    assertThat(changed).isNotNull();
    assertThat(new BytesLoader(Map.of(LatePatterns.SCANNER, changed)))
        .satisfies(loader -> loader.loadClass(ScannerImpl.class.getName()).getDeclaredFields());
    assertThat(LatePatterns.of(Map.of())).isEmpty();
  }

  private static String text(byte[] bytes) {
    return new String(Objects.requireNonNull(bytes), StandardCharsets.ISO_8859_1);
  }

  private static byte[] bytes(Class<?> type) throws IOException {
    String file = type.getName().substring(type.getName().lastIndexOf('.') + 1) + ".class";
    try (InputStream in = type.getResourceAsStream(file)) {
      return Objects.requireNonNull(in).readAllBytes();
    }
  }
}

package clampwise.packaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clampwise.MadeByBuild;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.TablesReader;
import clampwise.rulebook.Rulebook;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MadeMethodsTest {

  /** Every kind of value that can be written as code. */
  public record Row(int number, double size, boolean flag, Optional<String> word, Kind kind) {}

  /** A constant. */
  public enum Kind {
    ONE,
    OTHER
  }

  /** A host with one marked method that counts how often it is called. */
  public static final class Host {
    private Host() {}

    @MadeByBuild
    static Map<String, List<Row>> rows() {
      Map<String, List<Row>> rows = new LinkedHashMap<>();
      rows.put("z", IntStream.range(0, 3000).mapToObj(Host::row).toList());
      rows.put("a", List.of());
      return rows;
    }

    private static Row row(int i) {
      return new Row(i, i / 3.0, i % 2 == 0, Optional.of("row " + i), Kind.values()[i % 2]);
    }
  }

  /** A host whose value no code can make. */
  public static final class Impossible {
    private Impossible() {}

    @MadeByBuild
    static Optional<Object> thing() {
      return Optional.of(new Object());
    }
  }

  @Test
  void theMadeValueEqualsTheReadOneAndKeepsItsOrder() throws Exception {
    Map<?, ?> made = (Map<?, ?>) made(Host.class, "rows");

    assertThat(made).isEqualTo(Host.rows());
    assertThat(made.keySet().stream().map(Object::toString)).containsExactly("z", "a");
  }

  @Test
  void setsKeepTheirOrderToo() throws Exception {
    Set<String> words = Collections.unmodifiableSet(new LinkedHashSet<>(List.of("b", "a", "c")));

    Set<?> made =
        (Set<?>) call(new BytesLoader(Map.of("X", MadeClass.of("X", words))), "X", "make");

    assertThat(made.stream().map(Object::toString)).containsExactly("b", "a", "c");
  }

  @Test
  void aValueThatNoCodeMakesStopsTheBuild() {
    assertThatThrownBy(() -> MadeMethods.replace(bytes(Impossible.class)))
        .hasMessage("no code makes a java.lang.Object");
  }

  @ParameterizedTest
  @ValueSource(
      classes = {CatalogueReader.class, LimitsReader.class, TablesReader.class, Rulebook.class})
  void whatShipsWithTheProgramIsTheSameMadeAndRead(Class<?> reader) throws Exception {
    List<String> marked = MadeMethods.marked(bytes(reader));

    assertThat(marked).isNotEmpty();
    for (String name : marked) {
      assertThat(made(reader, name)).as(name).isEqualTo(call(reader, name));
    }
  }

  private static Object made(Class<?> host, String method) throws Exception {
    return call(new BytesLoader(MadeMethods.replace(bytes(host))), host.getName(), method);
  }

  private static Object call(ClassLoader loader, String type, String method) throws Exception {
    return call(loader.loadClass(type), method);
  }

  private static Object call(Class<?> type, String method) throws Exception {
    Method made = type.getDeclaredMethod(method);
    made.setAccessible(true);
    return made.invoke(null);
  }

  private static byte[] bytes(Class<?> type) throws IOException {
    String file = "/" + type.getName().replace('.', '/') + ".class";
    try (InputStream in = type.getResourceAsStream(file)) {
      return in.readAllBytes();
    }
  }
}

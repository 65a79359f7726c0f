package clampwise.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * All defects that can be planted, and rules that none is written for.
 *
 * @param without rules without a defect, with the reason
 */
record DefectBook(List<Defect> defects, Map<String, String> without) {
  private static final Path FOLDER = Path.of("src/test/resources/clampwise/proof/defects");

  static DefectBook read() {
    List<Defect> defects = new ArrayList<>();
    Map<String, String> without = new TreeMap<>();
    for (Path file : files()) {
      Draft.read(text(file)).root().forEach((rule, value) -> add(rule, value, defects, without));
    }
    return new DefectBook(List.copyOf(defects), without);
  }

  private static void add(
      String rule, Object value, List<Defect> defects, Map<String, String> without) {
    if (value instanceof String reason) {
      without.put(rule, reason);
      return;
    }
    int number = 0;
    for (Object each : Draft.list(value)) {
      defects.add(new Defect(rule, number++, Draft.mapping(each)));
    }
  }

  private static List<Path> files() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package clampwise.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules name the facts they judge without a package, so no two facts may be called alike. */
class FactNamesTest {

  @Test
  void everyFactHasANameOfItsOwn() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/main/java/clampwise/facts"))) {
      List<String> names =
          files
              .filter(FactNamesTest::isFact)
              .map(file -> file.getFileName().toString())
              .sorted()
              .toList();
      assertThat(names).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    }
  }

  private static boolean isFact(Path file) {
    try {
      return Files.isRegularFile(file) && Files.readString(file).contains("implements Fact {");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}

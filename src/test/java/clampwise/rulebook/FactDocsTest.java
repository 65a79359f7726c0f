package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The reference of facts is written from their sources. With {@code -Dupdate.docs} it is. */
class FactDocsTest {
  private static final Path DOCS = Path.of("docs");
  private static final Path FOLDER = DOCS.resolve("facts");

  @Test
  void theReferenceSaysWhatTheSourcesSay() throws IOException {
    Map<String, String> wanted = FactDocs.shipped().files();
    if (System.getProperty("update.docs") != null) {
      Files.createDirectories(FOLDER);
      for (String name : written().keySet()) {
        Files.deleteIfExists(DOCS.resolve(name));
      }
      for (Map.Entry<String, String> file : wanted.entrySet()) {
        Files.writeString(DOCS.resolve(file.getKey()), file.getValue());
      }
    }
    assertThat(written())
        .as("mvn -Pquick test -Dtest=FactDocsTest -Dupdate.docs")
        .isEqualTo(wanted);
  }

  private static Map<String, String> written() throws IOException {
    Map<String, String> files = new TreeMap<>();
    Path index = DOCS.resolve(FactDocs.INDEX);
    if (Files.exists(index)) {
      files.put(FactDocs.INDEX, Files.readString(index));
    }
    if (Files.isDirectory(FOLDER)) {
      try (Stream<Path> all = Files.list(FOLDER)) {
        for (Path file : all.toList()) {
          files.put("facts/" + file.getFileName(), Files.readString(file));
        }
      }
    }
    return files;
  }

  @Test
  void everyFactSaysWhatItsComponentsMean() {
    assertThat(FactDocs.shipped().all())
        .hasSizeGreaterThan(200)
        .flatExtracting(FactDocs::silent)
        .isEmpty();
  }

  @Test
  void everyFactThatARuleJudgesIsInTheList() {
    List<String> names =
        FactDocs.shipped().all().stream().map(fact -> (String) fact.getSimpleName()).toList();
    assertThat(Rulebook.builtIn().cards())
        .extracting(RuleCard::judges)
        .allSatisfy(fact -> assertThat(names).contains(fact));
  }
}

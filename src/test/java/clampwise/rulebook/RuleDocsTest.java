package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The documentation of the rules is written from the rules. With {@code -Dupdate.docs} it is. */
class RuleDocsTest {
  private static final Path FOLDER = Path.of("docs/rules");

  @Test
  void theDocumentationSaysWhatTheRulesSay() throws IOException {
    Map<String, String> wanted =
        new RuleDocs(Rulebook.builtIn().cards(), Bibliography.read()).files();
    if (Boolean.getBoolean("update.docs") || "".equals(System.getProperty("update.docs"))) {
      update(wanted);
    }

    assertThat(written())
        .as("mvn -Pquick test -Dtest=RuleDocsTest -Dupdate.docs")
        .isEqualTo(wanted);
  }

  private static void update(Map<String, String> wanted) throws IOException {
    for (String name : written().keySet()) {
      Files.delete(FOLDER.resolve(name));
    }
    Files.createDirectories(FOLDER);
    for (Map.Entry<String, String> file : wanted.entrySet()) {
      Files.writeString(FOLDER.resolve(file.getKey()), file.getValue());
    }
  }

  private static Map<String, String> written() throws IOException {
    Map<String, String> files = new TreeMap<>();
    if (Files.isDirectory(FOLDER)) {
      try (Stream<Path> all = Files.list(FOLDER)) {
        for (Path file : all.toList()) {
          files.put(file.getFileName().toString(), Files.readString(file));
        }
      }
    }
    return files;
  }

  @Test
  void thePageOfWhatIsCheckedNamesEveryRuleOnceAndNoOther() throws IOException {
    String page = Files.readString(Path.of("docs/what-is-checked.md"));
    assertThat(Pattern.compile("\\[([a-z-]+)]\\(rules/\\1\\.md\\)").matcher(page).results())
        .extracting(link -> link.group(1))
        .containsExactlyInAnyOrderElementsOf(RulePages.all().stream().map(RulePage::id).toList());
  }
}

package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the quick reader reads is what the whole parser reads, to the last position. */
class QuickYamlTest {
  private static final long SEED = 20260302;
  private static final int CHANGED = 20_000;
  private static final String PIECES =
      " \n\n  :,[]{}#-\"'&*!|>%@`?\\~.=<abz019\t\u00e4\u2028\ud83d\ufeff";

  private static List<String> texts() throws IOException {
    List<String> texts = new ArrayList<>();
    for (String folder : List.of("examples", "rules/base", "shared", "src/test/resources")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
          texts.add(Files.readString(file));
        }
      }
    }
    return texts;
  }

  private static boolean isSame(String text) {
    Optional<Node> quick = QuickYaml.read("a.yaml", text);
    if (quick.isPresent()) {
      Problems problems = new Problems();
      Optional<Node> whole = YamlReader.readWhole("a.yaml", text, problems).whole();
      assertThat(problems.sorted()).as(text).isEmpty();
      assertThat(quick).as(text).isEqualTo(whole);
    }
    return quick.isPresent();
  }

  @Test
  void theFilesOfTheProjectAreReadQuicklyAndTheSame() throws IOException {
    List<String> texts = texts();
    long quick = texts.stream().filter(QuickYamlTest::isSame).count();

    assertThat(texts).hasSizeGreaterThan(40);
    assertThat(quick).isGreaterThan(texts.size() * 8L / 10);
  }

  @Test
  void textsWithRandomChangesAreReadTheSameOrNotAtAll() throws IOException {
    Random random = new Random(SEED);
    List<String> texts = texts().stream().map(text -> part(text, random)).toList();
    int quick = 0;
    for (int i = 0; i < CHANGED; i++) {
      String text = texts.get(random.nextInt(texts.size()));
      for (int changes = random.nextInt(4); changes >= 0; changes--) {
        text = changed(text, random);
      }
      quick += isSame(text) ? 1 : 0;
    }
    assertThat(quick).isBetween(CHANGED / 20, CHANGED);
  }

  /** Some lines, so that most changes matter. */
  private static String part(String text, Random random) {
    List<String> lines = text.lines().toList();
    int from = random.nextInt(lines.size());
    return String.join("\n", lines.subList(from, Math.min(lines.size(), from + 12))) + "\n";
  }

  private static String changed(String text, Random random) {
    int at = random.nextInt(text.length() + 1);
    int to = Math.min(text.length(), at + random.nextInt(3));
    String piece =
        random.nextInt(4) == 0 ? "" : piece(random) + (random.nextBoolean() ? "" : piece(random));
    return text.substring(0, at) + piece + text.substring(to);
  }

  private static String piece(Random random) {
    return String.valueOf(PIECES.charAt(random.nextInt(PIECES.length())));
  }

  @Test
  void textsOfRandomPiecesAreReadTheSameOrNotAtAll() {
    Random random = new Random(SEED);
    List<String> words =
        List.of(
            "a", "b: ", "c:", "- ", "-", "\n", "\n  ", "\n    ", "{", "}", "[", "]", ", ", ",", " ",
            "\"x y\"", "'z'", " # note", "1.5 m", "a-b", "4:12", "-3", "x: y", "? ", "null", "~",
            "...");
    int quick = 0;
    for (int i = 0; i < CHANGED; i++) {
      StringBuilder text = new StringBuilder("k: ");
      for (int length = random.nextInt(12); length >= 0; length--) {
        text.append(words.get(random.nextInt(words.size())));
      }
      quick += isSame(text.toString()) ? 1 : 0;
    }
    assertThat(quick).isBetween(CHANGED / 50, CHANGED);
  }

  /** A key ends at the 1024th character of its line, spaces before the colon included. */
  @ParameterizedTest
  @ValueSource(ints = {900, 1020, 1030, 1100, 1500})
  void keysFarFromTheirColonsAreReadTheSameOrNotAtAll(int length) {
    String key = "a".repeat(length / 2) + " ".repeat(length - length / 2);
    assertThat(Stream.of(key + ": 1\n", "{" + key + ": 1}\n", "b: {" + key + ": 1}\n"))
        .allSatisfy(text -> assertThat(isSame(text)).isEqualTo(length < 1000));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "a", "a: |\n  b\n", "a: &x 1\n", "a: \"b\\n\"\n", "a: b\n  c\n", "a: 1\na: 2\n",
        "---\na: 1\n", "a: ''''\n", "{a, b: 1}", "a:\tb", "[a: 1]", "? a\n: b\n", "a: [1\n"
      })
  void whatIsUnusualIsLeftToTheWholeParser(String text) {
    assertThat(QuickYaml.read("a.yaml", text)).isEmpty();
  }
}

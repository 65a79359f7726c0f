package clampwise.report;

import clampwise.facts.loads.CalcSheet.Part;
import clampwise.review.Cautions;
import clampwise.review.Review;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;

/** The calculation sheets of a run as JSON of the shape {@value #FORMAT}. */
public final class CalcSheetJson {

  /** Name and version of the shape; the number grows when a reader of it could break. */
  public static final String FORMAT = "clampwise-calc-sheet/1";

  private final JsonGenerator json;
  private final JsonParts parts;
  private final JsonWork work;

  private CalcSheetJson(JsonGenerator json) {
    this.json = json;
    this.parts = new JsonParts(json);
    this.work = new JsonWork(json);
  }

  /** Writes one document for all jobs of a run. */
  public static void write(List<Review> reviews, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      CalcSheetJson document = new CalcSheetJson(json);
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      document.parts.list("jobs", reviews, document::job);
      json.writeArrayFieldStart("cautions");
      json.writeString(Cautions.NO_APPROVAL_BY_NUMBERS);
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void job(Review review) throws IOException {
    json.writeStringField("file", review.file());
    json.writeStringField("job", review.title());
    parts.list("parts", review.sheet().parts(), this::part);
  }

  private void part(Part part) throws IOException {
    json.writeStringField("field", part.field());
    json.writeStringField("zone", part.zone());
    json.writeStringField("title", part.title());
    json.writeStringField("result", part.result());
    work.sections("sections", part.sections());
  }
}

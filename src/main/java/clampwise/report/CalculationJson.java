package clampwise.report;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calculation.Calculation;
import clampwise.calculation.Reading;
import clampwise.review.Cautions;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;

/** A calculation that was run as JSON of the shape {@value #FORMAT}. */
public final class CalculationJson {

  /** Name and version of the shape; the number grows when a reader of it could break. */
  public static final String FORMAT = "clampwise-calculation/1";

  private final JsonGenerator json;
  private final JsonParts parts;
  private final Measure measure;

  private CalculationJson(JsonGenerator json, Measure measure) {
    this.json = json;
    this.parts = new JsonParts(json);
    this.measure = measure;
  }

  /** Writes one document. */
  public static void write(
      Calculation calculation, Reading reading, Work work, List<Term> results, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      CalculationJson document = new CalculationJson(json, work.measure());
      json.writeStartObject();
      document.head(calculation, reading);
      JsonWork shown = new JsonWork(json);
      shown.lines("lines", work.lines(), work.measure());
      shown.terms("results", results, work.measure());
      json.writeArrayFieldStart("cautions");
      json.writeString(Cautions.NO_APPROVAL_BY_NUMBERS);
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void head(Calculation calculation, Reading reading) throws IOException {
    json.writeStringField("format", FORMAT);
    json.writeStringField("calculation", calculation.name());
    json.writeStringField("title", calculation.title());
    json.writeStringField("validity", calculation.validity());
    json.writeStringField("units", measure.name().toLowerCase(Locale.ROOT));
    parts.list("given", reading.texts(), this::given);
  }

  private void given(Reading.Text text) throws IOException {
    json.writeStringField("name", text.input().name());
    json.writeStringField("text", text.text());
    json.writeBooleanField("written", text.written());
  }
}

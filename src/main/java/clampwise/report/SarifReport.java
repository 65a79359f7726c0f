package clampwise.report;

import clampwise.review.Cautions;
import clampwise.review.Review;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;

/** A run as SARIF 2.1.0 (OASIS), one run of one tool for all jobs; ASCII only, and no clock. */
final class SarifReport {

  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final JsonGenerator json;
  private final Run run;
  private final SarifRules rules;
  private final SarifPlaces places;

  private SarifReport(Run run, JsonGenerator json) {
    this.json = json;
    this.run = run;
    this.rules = new SarifRules(run);
    this.places = new SarifPlaces(json);
  }

  static void write(Run run, Writer out) throws IOException {
    try (JsonGenerator json = JsonReport.generator(out)) {
      new SarifReport(run, json).document();
    }
  }

  private void document() throws IOException {
    json.writeStartObject();
    json.writeStringField("$schema", SCHEMA);
    json.writeStringField("version", "2.1.0");
    json.writeArrayFieldStart("runs");
    json.writeStartObject();
    tool();
    json.writeStringField("language", "en");
    json.writeStringField("columnKind", "unicodeCodePoints");
    newLines();
    base();
    places.artifacts(run.reviews());
    invocation();
    results();
    properties();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
  }

  private void tool() throws IOException {
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "clampwise");
    json.writeStringField("version", run.version());
    SarifText.write("shortDescription", "Reviews rail-less solar layouts on metal roofs.", json);
    SarifText.write("fullDescription", Cautions.NO_APPROVAL, json);
    rules.write(json);
    SarifNotes.describe(json);
    json.writeEndObject();
    json.writeEndObject();
  }

  /** The lines of a file end as YAML ends them. */
  private void newLines() throws IOException {
    json.writeArrayFieldStart("newlineSequences");
    json.writeString("\r\n");
    json.writeString("\n");
    json.writeString("\r");
    json.writeEndArray();
  }

  private void base() throws IOException {
    json.writeObjectFieldStart("originalUriBaseIds");
    json.writeObjectFieldStart(SarifPlaces.BASE);
    SarifText.write("description", "The folder in which clampwise was called.", json);
    json.writeEndObject();
    json.writeEndObject();
  }

  private void invocation() throws IOException {
    json.writeArrayFieldStart("invocations");
    json.writeStartObject();
    json.writeBooleanField("executionSuccessful", run.isComplete());
    json.writeNumberField("exitCode", run.exitCode());
    json.writeStringField("exitCodeDescription", run.outcome());
    new SarifNotes(json, rules, places).write(run);
    json.writeEndObject();
    json.writeEndArray();
  }

  private void results() throws IOException {
    SarifResults results = new SarifResults(json, rules, places);
    json.writeArrayFieldStart("results");
    for (Review review : run.reviews()) {
      results.write(review);
    }
    json.writeEndArray();
  }

  private void properties() throws IOException {
    json.writeObjectFieldStart("properties");
    new JsonParts(json).list("jobs", run.reviews(), this::job);
    json.writeArrayFieldStart("cautions");
    for (String caution : Cautions.onTheRoof()) {
      json.writeString(caution);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void job(Review review) throws IOException {
    json.writeStringField("file", Harmless.of(review.file()));
    json.writeStringField("job", Harmless.of(review.title()));
    json.writeNumberField("modules", review.modules());
    new JsonParts(json).list("coverage", review.coverage(), new JsonParts(json)::coverage);
  }
}

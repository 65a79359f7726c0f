package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.NotChecked;
import clampwise.finding.Place;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Span;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The parts of a review as JSON objects. */
final class JsonParts {

  /** Writes the fields of one object. */
  @FunctionalInterface
  interface Fields<T> {
    void write(T value) throws IOException;
  }

  private final JsonGenerator json;
  private final Citations citations = Citations.packed();

  JsonParts(JsonGenerator json) {
    this.json = json;
  }

  <T> void list(String name, List<T> values, Fields<T> fields) throws IOException {
    json.writeArrayFieldStart(name);
    for (T value : values) {
      json.writeStartObject();
      fields.write(value);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  void problem(Problem problem) throws IOException {
    at(problem.at());
    json.writeStringField("found", problem.found());
    json.writeStringField("expected", problem.expected());
    if (problem.nearest().isPresent()) {
      json.writeStringField("nearest", problem.nearest().get());
    }
  }

  void finding(Finding finding) throws IOException {
    json.writeStringField("rule", finding.rule());
    json.writeStringField("severity", finding.severity().word());
    json.writeStringField("subject", finding.cause().path());
    loadCase(finding.loadCase());
    at(finding.at());
    if (finding.follows().isPresent()) {
      json.writeObjectFieldStart("follows");
      name(finding.follows().get());
      json.writeEndObject();
    }
    json.writeStringField("title", finding.title());
    json.writeStringField("message", finding.message());
    json.writeStringField("reason", finding.reason());
    json.writeStringField("remedy", finding.remedy());
    list("basis", finding.basis(), this::basis);
    comparison(finding.comparison());
    list("places", finding.places(), this::place);
    if (finding.chain().isPresent()) {
      new JsonWork(json).sections("work", finding.chain().get().sections());
    }
  }

  void accepted(Accepted accepted) throws IOException {
    json.writeStringField("kind", accepted.kind().name().toLowerCase(Locale.ROOT));
    json.writeStringField("reason", accepted.reason());
    json.writeStringField("by", accepted.by());
    json.writeStringField("until", accepted.until());
    at(accepted.at());
    json.writeObjectFieldStart("finding");
    finding(accepted.finding());
    json.writeEndObject();
  }

  void name(FindingName finding) throws IOException {
    json.writeStringField("rule", finding.rule());
    json.writeStringField("subject", finding.cause().path());
    loadCase(finding.loadCase());
  }

  private void loadCase(String loadCase) throws IOException {
    if (!loadCase.isEmpty()) {
      json.writeStringField("load-case", loadCase);
    }
  }

  void notChecked(NotChecked notChecked) throws IOException {
    json.writeStringField("rule", notChecked.rule());
    json.writeStringField("subject", notChecked.subject().path());
    json.writeStringField("reason", notChecked.reason());
    at(notChecked.at());
  }

  void coverage(Coverage coverage) throws IOException {
    json.writeStringField("rule", coverage.rule());
    json.writeNumberField("met", coverage.met());
    json.writeNumberField("not-met", coverage.notMet());
    json.writeNumberField("not-checked", coverage.notChecked());
  }

  private void basis(Basis basis) throws IOException {
    json.writeStringField("key", basis.key());
    json.writeStringField("document", citations.document(basis));
    json.writeStringField("detail", citations.detail(basis));
  }

  private void place(Place place) throws IOException {
    json.writeStringField("subject", place.subject().path());
    at(place.at());
    comparison(place.comparison());
  }

  /** Both numbers of a comparison, where there is one. */
  void comparison(Optional<Comparison> comparison) throws IOException {
    if (comparison.isEmpty()) {
      return;
    }
    Comparison numbers = comparison.get();
    Shown shown = Shown.of(numbers);
    json.writeObjectFieldStart("numbers");
    json.writeStringField("measured", shown.measured());
    json.writeStringField("limit", shown.limit());
    json.writeNumberField("measured-si", numbers.measuredSi());
    json.writeNumberField("limit-si", numbers.limitSi());
    json.writeStringField("unit", numbers.unit().symbol());
    if (Double.isFinite(numbers.ratio())) {
      json.writeNumberField("ratio", numbers.ratio());
    }
    json.writeEndObject();
  }

  private void at(Span span) throws IOException {
    json.writeObjectFieldStart("at");
    json.writeStringField("file", span.file());
    position("start", span.start());
    position("end", span.end());
    json.writeEndObject();
  }

  private void position(String name, Position position) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("line", position.line());
    json.writeNumberField("column", position.column());
    json.writeEndObject();
  }
}

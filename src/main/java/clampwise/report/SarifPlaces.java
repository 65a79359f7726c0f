package clampwise.report;

import clampwise.finding.Subject;
import clampwise.review.Review;
import clampwise.source.SourceText;
import clampwise.source.Span;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files and places of a run as SARIF says them; columns are code points on both sides. */
final class SarifPlaces {

  /** What consumers take for the root of the files under review. */
  static final String BASE = "%SRCROOT%";

  private final JsonGenerator json;
  private final Map<String, Integer> numbers = new LinkedHashMap<>();

  SarifPlaces(JsonGenerator json) {
    this.json = json;
  }

  /** Writes the files that were read, each once. */
  void artifacts(List<Review> reviews) throws IOException {
    json.writeArrayFieldStart("artifacts");
    for (Review review : reviews) {
      for (SourceText source : review.sources()) {
        if (numbers.putIfAbsent(source.file(), numbers.size()) == null) {
          artifact(source);
        }
      }
    }
    json.writeEndArray();
  }

  private void artifact(SourceText source) throws IOException {
    json.writeStartObject();
    file("location", source.file());
    json.writeArrayFieldStart("roles");
    json.writeString("analysisTarget");
    json.writeEndArray();
    json.writeStringField("encoding", "UTF-8");
    json.writeObjectFieldStart("hashes");
    json.writeStringField("sha-256", source.sha256());
    json.writeEndObject();
    json.writeEndObject();
  }

  /** A place as an object of a list: where it is written, and what of the job it is about. */
  void location(Span at, List<Subject> subjects) throws IOException {
    json.writeObjectFieldStart("physicalLocation");
    file("artifactLocation", at.file());
    json.writeObjectFieldStart("region");
    region(at);
    json.writeEndObject();
    json.writeEndObject();
    if (!subjects.isEmpty()) {
      json.writeArrayFieldStart("logicalLocations");
      for (Subject subject : subjects) {
        subject(subject.path());
      }
      json.writeEndArray();
    }
  }

  private void subject(String path) throws IOException {
    int last = path.lastIndexOf(Subject.SEPARATOR);
    String name = last < 0 ? path : path.substring(last + Subject.SEPARATOR.length());
    json.writeStartObject();
    json.writeStringField("name", Harmless.of(name));
    json.writeStringField("fullyQualifiedName", Harmless.of(path));
    json.writeEndObject();
  }

  /** What is empty stands for its line. */
  private void region(Span at) throws IOException {
    json.writeNumberField("startLine", at.start().line());
    json.writeNumberField("startColumn", at.start().column());
    if (!at.start().equals(at.end())) {
      json.writeNumberField("endLine", at.end().line());
      json.writeNumberField("endColumn", at.end().column());
    }
  }

  private void file(String field, String file) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("uri", UriText.of(file));
    if (UriText.isRelative(file)) {
      json.writeStringField("uriBaseId", BASE);
    }
    Integer number = numbers.get(file);
    if (number != null) {
      json.writeNumberField("index", number);
    }
    json.writeEndObject();
  }
}

package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Shown work as JSON: lines with result, formula, inputs and source. */
final class JsonWork {

  private final JsonGenerator json;
  private final Citations citations = Citations.packed();

  JsonWork(JsonGenerator json) {
    this.json = json;
  }

  /** Several parts of a calculation. */
  void sections(String name, List<Section> sections) throws IOException {
    json.writeArrayFieldStart(name);
    for (Section section : sections) {
      json.writeStartObject();
      json.writeStringField("title", section.title());
      json.writeStringField("units", section.measure().name().toLowerCase(Locale.ROOT));
      lines("lines", section.lines(), section.measure());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Lines in the units of a measure. */
  void lines(String name, List<Line> lines, Measure measure) throws IOException {
    json.writeArrayFieldStart(name);
    for (Line line : lines) {
      json.writeStartObject();
      line(line, measure);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Results in the units of a measure. */
  void terms(String name, List<Term> terms, Measure measure) throws IOException {
    json.writeArrayFieldStart(name);
    for (Term term : terms) {
      json.writeStartObject();
      term(term, measure);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void line(Line line, Measure measure) throws IOException {
    term(line.result(), measure);
    json.writeStringField("formula", line.formula());
    terms("inputs", line.inputs(), measure);
    source(line.source());
    json.writeStringField("note", line.note());
  }

  private void term(Term term, Measure measure) throws IOException {
    json.writeStringField("symbol", term.symbol());
    json.writeStringField("meaning", term.meaning());
    json.writeNumberField("value", measure.value(term));
    json.writeStringField("unit", measure.of(term.dimension()).symbol());
    json.writeNumberField("si", term.si());
  }

  private void source(Source source) throws IOException {
    json.writeObjectFieldStart("source");
    json.writeStringField("key", source.document());
    json.writeStringField("document", citations.document(source.document()));
    json.writeStringField("edition", source.edition());
    json.writeStringField("clause", source.clause());
    json.writeStringField("obtained", source.obtained());
    json.writeStringField("validity", source.validity());
    json.writeEndObject();
  }
}

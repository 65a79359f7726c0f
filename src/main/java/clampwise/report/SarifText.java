package clampwise.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/**
 * Texts as messages of SARIF: nothing in them is a placeholder or a link (2.1.0, 3.11.5, 3.11.6).
 */
final class SarifText {

  private SarifText() {}

  /** Writes a message of one paragraph. */
  static void write(String field, String text, JsonGenerator json) throws IOException {
    json.writeObjectFieldStart(field);
    json.writeStringField("text", escaped(Harmless.of(text)));
    json.writeEndObject();
  }

  /** The text with what a viewer would take for its own written so that it does not. */
  static String escaped(String text) {
    return text.replace("{", "{{").replace("}", "}}").replace("](", "] (");
  }
}

package clampwise.batch;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/**
 * Where values are written: one flat row, in which the type says what comes next.
 *
 * @param row the row
 * @param texts where each text was written first, counted from 0
 */
record CodecOut(JsonGenerator row, Map<String, Integer> texts) {

  CodecOut(JsonGenerator row) {
    this(row, new HashMap<>());
  }

  /** A text, or the number of the place at which it was written first. */
  void text(String text) throws IOException {
    Integer known = texts.putIfAbsent(text, texts.size());
    if (known == null) {
      row.writeString(text);
    } else {
      row.writeNumber(known);
    }
  }
}

package clampwise.batch;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Where values are read from; anything but what is expected is an error.
 *
 * @param row the row
 * @param texts the texts so far
 */
record CodecIn(JsonParser row, List<String> texts) {

  CodecIn(JsonParser row) {
    this(row, new ArrayList<>());
  }

  void expect(boolean isRight) throws IOException {
    if (!isRight) {
      throw new IOException("not what was written here");
    }
  }

  void expect(JsonToken token) throws IOException {
    expect(row.nextToken() == token);
  }

  String text() throws IOException {
    JsonToken token = row.nextToken();
    if (token == JsonToken.VALUE_NUMBER_INT) {
      int number = row.getIntValue();
      expect(number >= 0 && number < texts.size());
      return texts.get(number);
    }
    expect(token == JsonToken.VALUE_STRING);
    String text = row.getText();
    texts.add(text);
    return text;
  }

  int integer() throws IOException {
    expect(JsonToken.VALUE_NUMBER_INT);
    return row.getIntValue();
  }

  /** How many values follow. */
  int count(int most) throws IOException {
    int count = integer();
    expect(count >= 0 && count <= most);
    return count;
  }

  double number() throws IOException {
    if (row.nextToken() == JsonToken.VALUE_STRING) {
      double odd = Double.parseDouble(row.getText());
      expect(!Double.isFinite(odd));
      return odd;
    }
    expect(row.currentToken() == JsonToken.VALUE_NUMBER_FLOAT);
    return row.getDoubleValue();
  }

  boolean flag() throws IOException {
    JsonToken token = row.nextToken();
    expect(token == JsonToken.VALUE_TRUE || token == JsonToken.VALUE_FALSE);
    return token == JsonToken.VALUE_TRUE;
  }
}

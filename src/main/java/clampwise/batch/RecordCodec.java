package clampwise.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/**
 * Writes records as bytes and reads them back. Only values of the record's own types come out of
 * bytes, whoever wrote them; bytes that are not exactly of this type are an error. May be shared by
 * several threads.
 *
 * @param <T> the record
 */
public final class RecordCodec<T> {

  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(JsonWriteFeature.ESCAPE_NON_ASCII)
          .streamReadConstraints(
              StreamReadConstraints.builder().maxStringLength(Integer.MAX_VALUE).build())
          .build();

  private final Class<T> type;
  private final Shape shape;

  /** A codec for a record. */
  public RecordCodec(Class<T> type) {
    this.type = type;
    this.shape = new Shapes().of(type);
  }

  /** The bytes of a record; the same record gives the same bytes. */
  public byte[] encode(T value) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator row = JSON.createGenerator(bytes)) {
      row.writeStartArray();
      shape.write(value, new CodecOut(row));
      row.writeEndArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  /** The record of some bytes. */
  public T decode(byte[] bytes) throws IOException {
    try (JsonParser row = JSON.createParser(bytes)) {
      CodecIn in = new CodecIn(row);
      in.expect(JsonToken.START_ARRAY);
      T value = type.cast(shape.read(in));
      in.expect(JsonToken.END_ARRAY);
      in.expect(row.nextToken() == null);
      return value;
    } catch (RuntimeException e) {
      throw new IOException("bytes that are no " + type.getSimpleName(), e);
    }
  }
}

package clampwise.source;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Bytes to text, strictly: a byte that is not UTF-8 is a problem with a place. */
final class Utf8 {

  private static final String EXPECTED = "text saved as UTF-8";

  private Utf8() {}

  static Optional<String> decode(String file, byte[] bytes, Problems problems) {
    if (isUtf16(bytes)) {
      problems.add(Problem.of(Span.startOf(file), "text saved as UTF-16", EXPECTED));
      return Optional.empty();
    }
    if (isArchive(bytes)) {
      problems.add(Problem.of(Span.startOf(file), "an archive, as workbooks are", EXPECTED));
      return Optional.empty();
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CoderResult result = decoder.decode(in, chars, true);
    chars.flip();
    String text = withoutByteOrderMark(chars.toString());
    if (result.isError()) {
      String found = String.format("the byte 0x%02X, which is not UTF-8", bytes[in.position()]);
      problems.add(Problem.of(endOf(file, text), found, EXPECTED));
      return Optional.empty();
    }
    return Optional.of(text);
  }

  static String withoutByteOrderMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static boolean isUtf16(byte[] bytes) {
    return bytes.length >= 2
        && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
            || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE));
  }

  /** Spreadsheets and papers are kept in ZIP archives, which begin like this. */
  private static boolean isArchive(byte[] bytes) {
    return bytes.length >= 4
        && (bytes[0] == 'P' && bytes[1] == 'K')
        && (bytes[2] == 3 && bytes[3] == 4);
  }

  private static Span endOf(String file, String text) {
    Position end = positionAt(text, text.length());
    return new Span(file, end, end);
  }

  /** The place of a character of a text, by its index. */
  static Position positionAt(String text, int index) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < index; i++) {
      char c = text.charAt(i);
      if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
        line++;
        lineStart = i + 1;
      }
    }
    return new Position(line, text.codePointCount(lineStart, index) + 1);
  }
}

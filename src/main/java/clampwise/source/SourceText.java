package clampwise.source;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** A file as it was read, so that reports can show its lines and say which bytes were reviewed. */
public final class SourceText {

  private final String file;
  private final byte[] bytes;

  /**
   * Bytes of a file; not copied, and never changed here.
   *
   * @param file its name in positions
   */
  public SourceText(String file, byte[] bytes) {
    this.file = file;
    this.bytes = bytes;
  }

  /** Its name in positions. */
  public String file() {
    return file;
  }

  /** Its bytes, which nobody may change. */
  public byte[] bytes() {
    return bytes;
  }

  /** Its lines, as positions count them; what is not UTF-8 shows as a replacement character. */
  public List<String> lines() {
    String text = new String(bytes, StandardCharsets.UTF_8);
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return body.lines().toList();
  }

  /** The SHA-256 digest of its bytes, in hexadecimal. */
  public String sha256() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

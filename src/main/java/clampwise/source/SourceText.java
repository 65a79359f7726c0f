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

  /** Its digest, where that is all that is known of it; otherwise empty. */
  private final String digest;

  /**
   * Bytes of a file; not copied, and never changed here.
   *
   * @param file its name in positions
   */
  public SourceText(String file, byte[] bytes) {
    this(file, bytes, "");
  }

  private SourceText(String file, byte[] bytes, String digest) {
    this.file = file;
    this.bytes = bytes;
    this.digest = digest;
  }

  /** A file of which only the digest was kept; it has no lines. */
  public static SourceText ofDigest(String file, String sha256) {
    return new SourceText(file, new byte[0], sha256);
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

  /** Whether there is nothing in it but comments of YAML. */
  public boolean saysNothing() {
    return lines().stream().map(String::strip).allMatch(l -> l.isEmpty() || l.startsWith("#"));
  }

  /** The SHA-256 digest of its bytes, in hexadecimal. */
  public String sha256() {
    return digest.isEmpty() ? sha256(bytes) : digest;
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

package clampwise.batch;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * Bytes in a file of this program: a line that says what they are, their digest, and the bytes,
 * compressed. What was cut off, changed or written by something else is told by the digest.
 */
final class Packed {

  private static final int DIGEST = 64;

  /** No file of ours grows to this size; bytes that claim more are not ours. */
  private static final int MOST_BYTES = 1 << 30;

  private Packed() {}

  /** The bytes of a file. */
  static byte[] pack(String kind, byte[] content) throws IOException {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(head(kind));
    file.write(Digests.of(content).getBytes(StandardCharsets.US_ASCII));
    Deflater quick = new Deflater(Deflater.BEST_SPEED);
    try (DeflaterOutputStream out = new DeflaterOutputStream(file, quick)) {
      out.write(content);
    } finally {
      quick.end();
    }
    return file.toByteArray();
  }

  /** What was packed. */
  static byte[] unpack(String kind, byte[] file) throws IOException {
    byte[] head = head(kind);
    int start = head.length + DIGEST;
    if (file.length < start || !Arrays.equals(head, Arrays.copyOf(file, head.length))) {
      throw new IOException("not a file of this kind");
    }
    byte[] content;
    try (InflaterInputStream in =
        new InflaterInputStream(new ByteArrayInputStream(file, start, file.length - start))) {
      content = in.readNBytes(MOST_BYTES);
    }
    byte[] digest = Arrays.copyOfRange(file, head.length, start);
    byte[] right = Digests.of(content).getBytes(StandardCharsets.US_ASCII);
    if (!MessageDigest.isEqual(digest, right)) {
      throw new IOException("changed since it was written");
    }
    return content;
  }

  private static byte[] head(String kind) {
    return ("clampwise " + kind + "\n").getBytes(StandardCharsets.US_ASCII);
  }
}

package clampwise.batch;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** SHA-256 digests, in hexadecimal. */
final class Digests {

  private Digests() {}

  static String of(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /** The digest of several words, none of which can be taken for a part of another. */
  static String of(List<String> words) {
    MessageDigest digest = sha256();
    for (String word : words) {
      byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
      digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
      digest.update(bytes);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

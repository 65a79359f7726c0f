package clampwise.rulebook.own;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A fingerprint of texts, each counted with its length so that none runs into the next. */
final class Digest {
  private final MessageDigest digest = sha256();

  /** Fingerprint of some bytes. */
  static byte[] of(byte[] content) {
    return sha256().digest(content);
  }

  Digest add(byte[] content) {
    digest.update((content.length + " ").getBytes(StandardCharsets.US_ASCII));
    digest.update(content);
    return this;
  }

  Digest add(String text) {
    return add(text.getBytes(StandardCharsets.UTF_8));
  }

  /** The fingerprint in hexadecimal digits. */
  String hex() {
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}

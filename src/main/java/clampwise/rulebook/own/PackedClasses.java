package clampwise.rulebook.own;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Files by name in one run of bytes that begins with its own fingerprint. */
final class PackedClasses {
  private static final int FINGERPRINT = 32;

  private PackedClasses() {}

  static byte[] pack(Map<String, byte[]> files) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(files.size());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      out.writeUTF(file.getKey());
      out.writeInt(file.getValue().length);
      out.write(file.getValue());
    }
    byte[] content = bytes.toByteArray();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    whole.write(Digest.of(content));
    whole.write(content);
    return whole.toByteArray();
  }

  /** The files; none if a byte is missing or another than was written. */
  static Optional<Map<String, byte[]>> unpack(byte[] whole) throws IOException {
    if (whole.length < FINGERPRINT) {
      return Optional.empty();
    }
    byte[] content = Arrays.copyOfRange(whole, FINGERPRINT, whole.length);
    if (!Arrays.equals(Digest.of(content), Arrays.copyOf(whole, FINGERPRINT))) {
      return Optional.empty();
    }
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(content));
    Map<String, byte[]> files = new TreeMap<>();
    for (int left = in.readInt(); left > 0; left--) {
      String name = in.readUTF();
      files.put(name, in.readNBytes(in.readInt()));
    }
    return Optional.of(files);
  }
}

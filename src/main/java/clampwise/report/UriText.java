package clampwise.report;

import java.nio.charset.StandardCharsets;

/** Names of files as URI references (RFC 3986): what is not plain is percent-encoded. */
final class UriText {

  private static final String PLAIN = "-._~/";
  private static final String HEX = "0123456789ABCDEF";

  private UriText() {}

  /** The reference to a file, relative if its name is. */
  static String of(String file) {
    if (file.startsWith("//")) {
      return "file:" + encoded(file);
    }
    if (file.startsWith("/")) {
      return "file://" + encoded(file);
    }
    if (hasDrive(file)) {
      return "file:///" + file.substring(0, 2) + encoded(file.substring(2));
    }
    return encoded(file.startsWith("./") ? file.substring(2) : file);
  }

  /** Whether a file is named from the folder in which the program was called. */
  static boolean isRelative(String file) {
    return !file.startsWith("/") && !hasDrive(file);
  }

  private static boolean hasDrive(String file) {
    return file.length() > 2 && file.startsWith(":/", 1) && isLetter(file.charAt(0));
  }

  private static String encoded(String name) {
    StringBuilder uri = new StringBuilder();
    for (byte one : name.getBytes(StandardCharsets.UTF_8)) {
      char c = (char) (one & 0xFF);
      if (isLetter(c) || c >= '0' && c <= '9' || PLAIN.indexOf(c) >= 0) {
        uri.append(c);
      } else {
        uri.append('%').append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 0xF));
      }
    }
    return uri.toString();
  }

  private static boolean isLetter(char c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z';
  }
}

package clampwise.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Texts packed with the program. */
final class Resources {

  private Resources() {}

  /** A text that is part of every build. */
  static String text(String name) {
    try (InputStream in = Resources.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the build lacks " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

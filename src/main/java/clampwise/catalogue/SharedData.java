package clampwise.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Data that ships with the program, from the shared folder of the project. */
final class SharedData {

  private static final String FOLDER = "/clampwise/shared/";

  private SharedData() {}

  static String text(String file) {
    try (InputStream stream = SharedData.class.getResourceAsStream(FOLDER + file)) {
      if (stream == null) {
        throw new IllegalStateException("the program was packed without " + file);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

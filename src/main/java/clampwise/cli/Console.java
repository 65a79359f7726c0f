package clampwise.cli;

import clampwise.report.Harmless;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Everything the commands see of the world: streams, environment, screen.
 *
 * @param in standard input
 * @param out standard output
 * @param err standard error
 */
public record Console(
    InputStream in,
    OutputStream out,
    OutputStream err,
    Map<String, String> environment,
    Screen screen) {

  /** Prints a text, always in UTF-8. */
  public void print(CharSequence text) {
    write(out, text.toString());
  }

  /** Says on standard error what went wrong, in one line. */
  public void complain(String message) {
    write(err, "clampwise: " + Harmless.of(message) + "\n");
  }

  private static void write(OutputStream stream, String text) {
    try {
      stream.write(text.getBytes(StandardCharsets.UTF_8));
      stream.flush();
    } catch (IOException e) {
      throw new UnwritableException(e);
    }
  }
}

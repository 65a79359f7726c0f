package clampwise.report;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A job whose names would do something if anything obeyed them. */
public final class Hostile {

  /** Markup, script, a way out of attributes, and a way out of style sheets. */
  public static final String MARKUP =
      "</td><script>window.hacked=1</script><img src=x onerror=window.hacked=1>\"'}{--><![CDATA[";

  /** A right-to-left mark, a letter of four bytes and one that few fonts have. */
  public static final String LETTERS = "\\u202Etxet \\U0001F6A8 \\u4E2D";

  /** What a spreadsheet would work out, and what a terminal would obey. */
  public static final String COMMANDS = "=HYPERLINK(\\\"x\\\") \\e[31mred\\a";

  private Hostile() {}

  /** The junior's job under other names. */
  public static String job() {
    try {
      String job = Files.readString(Path.of("examples/barn-junior/job.yaml"));
      return job.replace(
              "job: Hay barn, south slope",
              "job: \"" + escaped(MARKUP) + LETTERS + " " + COMMANDS + "\"")
          .replace("barn roof", "'" + MARKUP.replace("'", "''") + "'")
          .replace("vent 1:", "\"" + escaped(MARKUP) + "W".repeat(400) + LETTERS + "\":");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\").replace("\"", "\\\"");
  }

  /** Its review. */
  public static Review review() {
    byte[] text = job().getBytes(StandardCharsets.UTF_8);
    return new Reviewer().review("job.yaml", text, SourceFiles.in(Path.of("examples/barn-junior")));
  }
}

package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A report of the sample reviews, held against the one that was looked at by a person. */
final class Snapshot {

  private static final Path FOLDER = Path.of("src/test/resources/clampwise/report");

  private Snapshot() {}

  /** The same set of findings for every format. */
  static Run sample() {
    return new Run(List.of(SampleReview.full(), SampleReview.withConsequence()), "0.1.0", 2);
  }

  static byte[] bytes(ReportKind kind, Run run) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      kind.write(run, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(ReportKind kind, Run run) {
    return new String(bytes(kind, run), StandardCharsets.UTF_8);
  }

  /** Compares; with {@code -Dupdate.snapshots} writes what is to be compared with. */
  static void check(String name, String text) throws IOException {
    Path file = FOLDER.resolve(name);
    if (System.getProperty("update.snapshots") != null) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, text);
    }
    assertThat(text).isEqualTo(Files.readString(file));
  }
}

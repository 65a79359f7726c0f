package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.report.SampleReview;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFilesTest {

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    Desk desk = (name, unused) -> SampleReview.of(SampleReview.frame());
    return new Clampwise(console, any -> desk, List::of).run(arguments);
  }

  private String in(String name) {
    return folder.resolve(name).toString();
  }

  private String complaint() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void reportsAreWrittenBesideWhatIsPrinted() {
    int code = run("review", "--report", in("a.json"), "--report", in("b.JSON"), "job.yaml");

    assertThat(code).isEqualTo(1);
    assertThat(printed()).contains("Frame height outside");
    assertThat(folder.resolve("a.json")).content().contains("frame-outside-mid-clamp-range");
    assertThat(folder.resolve("b.JSON")).hasSameTextualContentAs(folder.resolve("a.json"));
  }

  @Test
  void aQuietRunReportsInFull() {
    run("review", "--quiet", "--fail-on", "never", "--report", in("a.json"), "job.yaml");

    assertThat(printed()).isEmpty();
    assertThat(folder.resolve("a.json")).content().contains("frame-outside-mid-clamp-range");
  }

  @Test
  void anUnknownEndingIsRefusedBeforeAnythingIsReviewed() {
    int code = run("review", "--report", in("a.jsn"), "job.yaml");

    assertThat(code).isEqualTo(2);
    assertThat(complaint()).contains("--report takes a file that ends in", "nearest is .json");
    assertThat(printed()).isEmpty();
  }

  @Test
  void anEmptyNameIsSaidToBeOne() {
    assertThat(run("review", "--report", "", "job.yaml")).isEqualTo(2);
    assertThat(complaint()).contains("an empty name does not");
  }

  @Test
  void oneFileTakesOneReport() {
    String twice = in("x/../a.json");

    assertThat(run("review", "--report", in("a.json"), "--report", twice, "job.yaml")).isEqualTo(2);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void noJobIsWrittenOver() throws IOException {
    Path job = Files.writeString(folder.resolve("job.json"), "job: J");

    assertThat(run("review", "--report", job.toString(), job.toString())).isEqualTo(2);
    assertThat(complaint()).contains("would write over the job");
    assertThat(job).content().isEqualTo("job: J");
  }

  @Test
  void noJobIsWrittenOverThroughALink() throws IOException {
    Path job = Files.writeString(folder.resolve("job.json"), "job: J");
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), job);
    Path also = Files.createSymbolicLink(folder.resolve("also"), folder);

    assertThat(run("review", "--report", link.toString(), job.toString())).isEqualTo(2);
    assertThat(run("review", "--report", job.toString(), link.toString())).isEqualTo(2);
    assertThat(run("review", "--report", also + "/job.json", job.toString())).isEqualTo(2);
    assertThat(job).content().isEqualTo("job: J");
  }

  @Test
  void twoNamesOfOneFileAreOneFile() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("a.json"));

    int code = run("review", "--report", in("a.json"), "--report", link.toString(), "job.yaml");

    assertThat(code).isEqualTo(2);
    assertThat(folder.resolve("a.json")).doesNotExist();
  }

  @Test
  void aFolderThatIsMissingIsSaidBeforeTheReview() {
    assertThat(run("review", "--report", in("no/a.json"), "job.yaml")).isEqualTo(2);
    assertThat(complaint()).contains("does not exist");
    assertThat(printed()).isEmpty();
  }

  @Test
  void aReportThatCannotBeWrittenLeavesThePrintedReviewWhole() throws IOException {
    Files.createDirectory(folder.resolve("a.json"));

    assertThat(run("review", "--report", in("a.json"), "job.yaml")).isEqualTo(2);
    assertThat(printed()).contains("Frame height outside");
    assertThat(complaint()).contains("could not be written");
  }
}

package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartCommandTest {

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final StartCommand start =
      new StartCommand(
          new Console(
              InputStream.nullInputStream(),
              out,
              OutputStream.nullOutputStream(),
              Map.of(),
              Screen.NONE));

  @Test
  void theStarterIsClean(@TempDir Path folder) {
    Path job = folder.resolve("my job.yaml");
    start.run(job.toString());
    assertThat(out.toString(StandardCharsets.UTF_8))
        .endsWith("then clampwise review \"" + job + "\"\n");
    Review review = new Reviewer().review(job);
    assertThat(review.problems()).isEmpty();
    assertThat(review.findings()).isEmpty();
  }

  @Test
  void aFileThatExistsIsNeverTouched(@TempDir Path folder) throws IOException {
    Path job = Files.writeString(folder.resolve("job.yaml"), "mine");
    assertThatThrownBy(() -> start.run(job.toString()))
        .isInstanceOf(UsageException.class)
        .hasMessageContaining("exists already");
    assertThat(job).hasContent("mine");
  }

  @Test
  void aFolderIsNeverTouched(@TempDir Path folder) {
    assertThatThrownBy(() -> start.run(folder.toString())).isInstanceOf(UsageException.class);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aMissingFolderIsNamed(@TempDir Path folder) {
    assertThatThrownBy(() -> start.run(folder.resolve("none/job.yaml").toString()))
        .hasMessageContaining("does not exist");
  }

  @Test
  void aDashPrintsTheJob() {
    assertThat(start.run("-")).isZero();
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("job: My first roof");
  }
}

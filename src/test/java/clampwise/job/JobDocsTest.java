package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Schema and reference page are written from the records. With {@code -Dupdate.docs} they are. */
class JobDocsTest {

  @Test
  void theSchemaSaysWhatTheRecordsSay() throws IOException {
    check(Path.of("shared/job.schema.json"), JobSchema.text());
  }

  @Test
  void theReferencePageSaysWhatTheRecordsSay() throws IOException {
    check(Path.of("docs/job-file-keys.md"), KeysPage.text());
  }

  private static void check(Path file, String written) throws IOException {
    if (System.getProperty("update.docs") != null) {
      Files.writeString(file, written);
    }
    assertThat(file)
        .as("mvn -Pquick test -Dtest=JobDocsTest -Dupdate.docs")
        .exists()
        .content()
        .isEqualTo(written);
  }
}

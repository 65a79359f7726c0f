package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.gate.DebtFile;
import clampwise.gate.DeviationFile;
import clampwise.policy.PolicyFile;
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

  @Test
  void theSchemasOfFilesBesideJobsSayWhatTheirRecordsSay() throws IOException {
    check(
        Path.of("shared/policy.schema.json"),
        JobSchema.of(
            PolicyFile.class,
            "clampwise policy",
            "What a house asks of the jobs in a folder and below it."));
    check(
        Path.of("shared/accepted.schema.json"),
        JobSchema.of(
            DeviationFile.class,
            "clampwise accepted deviations",
            "Findings of one job that somebody answers for."));
    check(
        Path.of("shared/debts.schema.json"),
        JobSchema.of(
            DebtFile.class,
            "clampwise known debts",
            "Findings that a repository of jobs had when clampwise was adopted."));
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

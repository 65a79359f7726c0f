package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.report.SampleReview;
import clampwise.repository.Scratch;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChangedJobsTest {

  private static final String JOB =
      """
      job: Shed
      fields:
        A:
          attach: {file: rows.csv}
      """;

  @TempDir private Path folder;
  private Scratch scratch;
  private String first = "";
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void aRepositoryOfTwoJobs() {
    scratch = new Scratch(folder).init();
    scratch
        .file("a/b/job.yaml", "job: Barn\n")
        .file("s/job.yaml", JOB)
        .file("s/rows.csv", "x,y\n1 m,2 m\n");
    scratch.files("a/other.csv");
    first = scratch.commit();
  }

  private TreeSet<String> reviewed(String revision, String... words) {
    ConcurrentSkipListSet<String> names = new ConcurrentSkipListSet<>();
    Desk desk =
        (name, console) -> {
          names.add(folder.relativize(Path.of(name)).toString());
          return SampleReview.of();
        };
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    String[] all = new String[words.length + 3];
    all[0] = "review";
    all[1] = "--changed";
    all[2] = revision;
    System.arraycopy(words, 0, all, 3, words.length);
    assertThat(new Clampwise(console, any -> desk, List::of).run(all)).isZero();
    return new TreeSet<>(names);
  }

  @Test
  void nothingAffectedIsSaidAndPasses() {
    scratch.file("a/other.csv", "changed");
    assertThat(reviewed(first, folder.toString())).isEmpty();
    assertThat(err.toString(UTF_8))
        .isEqualTo("clampwise: none of 2 jobs are affected since " + first + "\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a/b/job.yaml",
        "a/b/job.accepted.yaml",
        "a/b/clampwise-policy.yaml",
        "a/clampwise-policy.yaml",
        "a/clampwise-debts.yaml"
      })
  void aJobIsAffectedByWhatStandsBesideAndAboveIt(String file) {
    scratch.file(file, "changed: yes\n");
    assertThat(reviewed(first, folder.toString())).containsExactly("a/b/job.yaml");
    assertThat(err.toString(UTF_8)).contains("1 of 2 jobs is affected since");
  }

  @Test
  void aPolicyOfTheWholeRepositoryAffectsAllOfIt() {
    scratch.file("clampwise-policy.yaml", "x: y\n").commit();
    assertThat(reviewed(first, folder.toString())).containsExactly("a/b/job.yaml", "s/job.yaml");
    assertThat(reviewed("HEAD", folder.toString())).isEmpty();
  }

  @Test
  void aJobIsAffectedByAFileThatItNames() {
    scratch.file("s/rows.csv", "x,y\n1 m,3 m\n");
    assertThat(reviewed(first, folder.toString())).containsExactly("s/job.yaml");
  }

  @Test
  void aJobIsAffectedByAFileThatItNamesAndThatIsGone() throws Exception {
    Files.delete(folder.resolve("s/rows.csv"));
    assertThat(reviewed(first, folder.toString())).containsExactly("s/job.yaml");
  }

  @Test
  void aFileThatNeverWasIsNoChangeUntilItComes() throws Exception {
    Files.delete(folder.resolve("s/rows.csv"));
    String without = scratch.commit();
    assertThat(reviewed(without, folder.toString())).isEmpty();
    scratch.file("s/rows.csv", "x,y\n");
    assertThat(reviewed(without, folder.toString())).containsExactly("s/job.yaml");
  }

  @Test
  void aNewJobIsAffected() {
    scratch.file("n/job.yaml", "job: New\n");
    assertThat(reviewed(first, folder.toString())).containsExactly("n/job.yaml");
  }

  @Test
  void anUnknownRevisionIsSaidBeforeAnythingIsReviewed() {
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    Desk desk = (name, unused) -> SampleReview.of();
    int code =
        new Clampwise(console, any -> desk, List::of)
            .run("review", "--changed", "nowhere", folder.toString());
    assertThat(code).isEqualTo(2);
    assertThat(err.toString(UTF_8))
        .contains("--changed cannot compare: there is no revision nowhere");
    assertThat(out.toString(UTF_8)).isEmpty();
  }
}

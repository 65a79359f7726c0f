package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.proof.JobForest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The small brother of bench/many-jobs.sh: sixty jobs of every kind, in one run and in parts. */
class JobForestTest {

  private static final int JOBS = 60;
  private static final List<String> KINDS = List.of("sarif", "xml", "md", "csv", "json");

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(List<String> words) {
    out.reset();
    err.reset();
    Map<String, String> environment = Map.of("XDG_CACHE_HOME", folder.resolve("cache").toString());
    Console console =
        new Console(InputStream.nullInputStream(), out, err, environment, Screen.NONE);
    return new Clampwise(console, ReviewDesk::new, List::of).run(words.toArray(String[]::new));
  }

  private List<String> words(String command, String reports, String... more) {
    List<String> words = new ArrayList<>(List.of(command));
    for (String kind : KINDS) {
      words.addAll(List.of("--report", folder.resolve(reports + "." + kind).toString()));
    }
    words.addAll(List.of(more));
    return words;
  }

  private void sameReports(String reports) {
    for (String kind : KINDS) {
      assertThat(folder.resolve(reports + "." + kind))
          .hasSameBinaryContentAs(folder.resolve("one." + kind));
    }
  }

  @Test
  void oneRunKeptResultsFewerCoresAndPartsGiveTheSameBytes() throws IOException {
    String jobs = folder.resolve("jobs").toString();
    JobForest.write(Path.of(jobs), JOBS);
    assertThat(run(words("review", "one", "--no-cache", jobs))).isEqualTo(1);
    String text = out.toString(UTF_8);
    assertThat(err.toString(UTF_8)).isEmpty();
    assertThat(text).contains("Jobs (60)").doesNotContain("never reviewed");

    assertThat(run(words("review", "cold", jobs))).isEqualTo(1);
    assertThat(out.toString(UTF_8)).isEqualTo(text);
    sameReports("cold");
    assertThat(run(words("review", "warm", "--cores", "1", jobs))).isEqualTo(1);
    assertThat(out.toString(UTF_8)).isEqualTo(text);
    sameReports("warm");

    List<String> parts = new ArrayList<>();
    for (int part = 4; part >= 1; part--) {
      String file = folder.resolve("part-" + part).toString();
      String[] words = {"review", "--no-cache", "--part", part + "/4", "--to", file, jobs};
      assertThat(run(List.of(words))).isZero();
      parts.add(file);
    }
    assertThat(run(words("merge", "all", parts.toArray(String[]::new)))).isEqualTo(1);
    assertThat(out.toString(UTF_8)).isEqualTo(text);
    sameReports("all");
  }

  @Test
  void theSameNumberGivesTheSameJobs() throws IOException {
    JobForest.write(folder.resolve("a"), 20);
    JobForest.write(folder.resolve("b"), 20);
    Path last = Path.of("district 0/job 19/job.yaml");
    assertThat(folder.resolve("a").resolve(last))
        .hasSameBinaryContentAs(folder.resolve("b").resolve(last));
    assertThat(Files.readString(folder.resolve("a").resolve(last))).contains("planes:");
  }
}

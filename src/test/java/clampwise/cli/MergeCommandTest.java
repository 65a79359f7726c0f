package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.policy.Policy;
import clampwise.report.SampleReview;
import clampwise.repository.Scratch;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MergeCommandTest {

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Policy policy = Policy.NONE;

  @BeforeEach
  void jobs() {
    Scratch scratch = new Scratch(folder.resolve("jobs"));
    scratch.files("a/job.yaml", "b/job.yaml", "fault/job.yaml", "wrong/job.yaml", "z/job.yaml");
  }

  private int run(String... arguments) {
    out.reset();
    err.reset();
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    return new Clampwise(console, options -> desk(), List::of).run(arguments);
  }

  private Desk desk() {
    return new Desk() {
      @Override
      public Review review(String name, Console console) {
        return MergeCommandTest.review(name, console);
      }

      @Override
      public Policy policy(String job) {
        return policy;
      }
    };
  }

  private static Review review(String name, Console console) {
    if (name.contains("fault")) {
      throw new IllegalStateException("wheel came off");
    }
    return name.contains("wrong") ? SampleReview.of(SampleReview.frame()) : SampleReview.of();
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private String[] parts(int parts, String... more) {
    List<String> files = new ArrayList<>();
    for (int part = 1; part <= parts; part++) {
      List<String> words = new ArrayList<>(List.of("review", "--part", part + "/" + parts, "--to"));
      words.add(path("part" + part));
      words.addAll(List.of(more));
      words.add(path("jobs"));
      assertThat(run(words.toArray(String[]::new))).isZero();
      files.add(path("part" + part));
    }
    return files.toArray(String[]::new);
  }

  private int merge(String[] files, String... more) {
    List<String> words = new ArrayList<>(List.of("merge"));
    words.addAll(List.of(more));
    words.addAll(List.of(files));
    return run(words.toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7})
  void joinedPartsSayWhatOneRunSays(int parts) throws IOException {
    int code =
        run("review", path("jobs"), "--report", path("one.sarif"), "--report", path("one.md"));
    String text = out.toString(UTF_8);
    String told = err.toString(UTF_8);
    String[] files = parts(parts);
    assertThat(merge(files, "--report", path("all.sarif"), "--report", path("all.md")))
        .isEqualTo(code)
        .isEqualTo(70);
    assertThat(out.toString(UTF_8)).isEqualTo(text);
    assertThat(err.toString(UTF_8)).isEqualTo(told);
    assertThat(folder.resolve("all.sarif")).hasSameTextualContentAs(folder.resolve("one.sarif"));
    assertThat(folder.resolve("all.md")).hasSameTextualContentAs(folder.resolve("one.md"));
    run("review", "--lines", path("jobs"));
    String lines = out.toString(UTF_8);
    merge(files, "--lines");
    assertThat(out.toString(UTF_8)).isEqualTo(lines);
  }

  @Test
  void joinedPartsArePrintedAsTheHouseHasOneRun() throws IOException {
    Path file = Files.writeString(folder.resolve("policy.yaml"), "output: {format: lines}\n");
    String[] files = parts(2);
    merge(files);
    String text = out.toString(UTF_8);
    policy = new Reviewer(Optional.of(file)).policy(Path.of("job.yaml"));
    run("review", path("jobs"));
    String lines = out.toString(UTF_8);
    assertThat(merge(files)).isEqualTo(70);
    assertThat(out.toString(UTF_8)).isEqualTo(lines).isNotEqualTo(text);
    merge(files, "--format", "text");
    assertThat(out.toString(UTF_8)).isEqualTo(text);
  }

  @Test
  void theThresholdOfThePartsHolds() throws IOException {
    Files.delete(folder.resolve("jobs/fault/job.yaml"));
    assertThat(merge(parts(2))).isEqualTo(1);
    assertThat(merge(parts(2, "--fail-on", "never"))).isZero();
  }

  @Test
  void aPartAloneIsPrintedLikeAnyRun() {
    assertThat(run("review", "--part", "1/5", path("jobs"))).isZero();
    assertThat(out.toString(UTF_8)).contains("Review of").doesNotContain("Jobs (");
  }

  @Test
  void reportsThatNeedLayoutsAreRefused() {
    String[] files = parts(2);
    assertThat(merge(files, "--report", path("all.pdf"))).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("all.pdf needs the layouts themselves");
    assertThat(folder.resolve("all.pdf")).doesNotExist();
  }

  @Test
  void whatIsMissingOrNoPartIsSaid() throws IOException {
    String[] files = parts(2);
    assertThat(run("merge", files[1])).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("cannot be joined: part 1 of 2 missing");
    assertThat(run("merge", path("nowhere"))).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("there is no file");
    Files.writeString(folder.resolve("note"), "a note");
    assertThat(run("merge", path("note"), files[0])).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("note is no whole part of a review");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0/2", "3/2", "2", "/", "a/b", "1/", "/1", "-1/2", "1/2/3", "1/99999"})
  void aPartIsOneOfSeveral(String part) {
    assertThat(run("review", "--part", part, path("jobs"))).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("--part takes one part of several, such as 2/4");
  }

  @Test
  void aRunThatWritesAPartPrintsNothingElse() {
    assertThat(run("review", "--to", path("p"), "--lines", path("jobs"))).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("give --lines to clampwise merge");
    run("review", "--to", path("p"), path("jobs"));
    assertThat(out.toString(UTF_8)).isEqualTo("5 of 5 jobs reviewed into " + path("p") + "\n");
    assertThat(err.toString(UTF_8)).contains("internal fault");
  }
}

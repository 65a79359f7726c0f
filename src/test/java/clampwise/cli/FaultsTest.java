package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clampwise.cli.Program.Said;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can go wrong around a run, done to the program as a process of its own. */
@DisabledOnOs(OS.WINDOWS)
class FaultsTest {

  private static final List<String> EXAMPLES =
      List.of("barn", "barn-junior", "garage-wiring", "store-package");

  @TempDir private static Path quiet;
  private static Said whole = new Said(0, "", "");
  private static byte[] wholeReport = new byte[0];

  @TempDir private Path folder;
  private Program program = Program.in(Path.of(""));

  @BeforeAll
  static void aRunThatNothingHappensTo() throws IOException {
    copyJobs(quiet);
    whole = Program.in(quiet).run("review", "--no-cache", "--report", "whole.sarif", "jobs");
    assertThat(whole.code()).isEqualTo(1);
    assertThat(whole.err()).isEmpty();
    wholeReport = Files.readAllBytes(quiet.resolve("whole.sarif"));
  }

  @BeforeEach
  void aFolderOfJobs() throws IOException {
    copyJobs(folder);
    program = Program.in(folder).with("XDG_CACHE_HOME", folder.resolve("cache").toString());
  }

  private static void copyJobs(Path folder) throws IOException {
    for (String name : EXAMPLES) {
      Path job = folder.resolve("jobs/" + name + "/job.yaml");
      Files.createDirectories(job.getParent());
      Files.copy(Path.of("examples", name, "job.yaml"), job);
    }
  }

  private void saysTheSame(Said said) {
    assertThat(said.err()).isEmpty();
    assertThat(said).isEqualTo(whole);
  }

  private List<Path> under(String name) throws IOException {
    Path in = folder.resolve(name);
    if (!Files.exists(in)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(in)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void killedAtAnyMomentNothingIsHalfWritten() throws Exception {
    Random random = new Random(6);
    Path report = folder.resolve("r/out.sarif");
    Files.createDirectories(report.getParent());
    for (int i = 0; i < 6; i++) {
      Files.writeString(report, "before");
      Process process =
          program
              .command("review", "--report", "r/out.sarif", "--report", "r/out.xml", "jobs")
              .redirectOutput(folder.resolve("out").toFile())
              .redirectError(folder.resolve("err").toFile())
              .start();
      process.waitFor(300 + random.nextInt(1500), TimeUnit.MILLISECONDS);
      process.destroyForcibly().waitFor();
      byte[] left = Files.readAllBytes(report);
      assertThat(left.length == 6 || Arrays.equals(left, wholeReport)).isTrue();
    }
    saysTheSame(program.run("review", "--report", "r/out.sarif", "jobs"));
    assertThat(report).hasBinaryContent(wholeReport);
    saysTheSame(program.run("review", "jobs"));
  }

  @Test
  void whatAKilledRunLeftBesideAReportGoesAfterADay() throws IOException {
    Path left = Files.writeString(folder.resolve("all.sarif.1.part"), "half");
    Path young = Files.writeString(folder.resolve("all.sarif.2.part"), "half");
    Path other = Files.writeString(folder.resolve("other.3.part"), "somebody else's");
    for (Path old : List.of(left, other)) {
      Files.setLastModifiedTime(old, FileTime.from(Instant.now().minusSeconds(200_000)));
    }
    saysTheSame(program.run("review", "--report", "all.sarif", "jobs"));
    assertThat(left).doesNotExist();
    assertThat(young).exists();
    assertThat(other).exists();
  }

  @Test
  void aFullDiskLeavesTheOldReportAndSaysSo() throws IOException {
    try (SmallDisk disk = SmallDisk.mount(folder.resolve("small"), 40)) {
      Files.writeString(folder.resolve("small/out.sarif"), "before");
      Said said = program.run("review", "--report", "small/out.sarif", "jobs");
      assertThat(said.code()).isEqualTo(2);
      assertThat(said.out()).isEqualTo(whole.out());
      assertThat(said.err())
          .isEqualTo(
              "clampwise: small/out.sarif could not be written; choose a file you may write to\n");
      assertThat(folder.resolve("small/out.sarif")).hasContent("before");
      assertThat(under("small")).hasSize(1);
      Said part = program.run("review", "--to", "small/out.sarif", "--part", "1/1", "jobs");
      assertThat(part.code()).isIn(0, 2);
      assertThat(disk).isNotNull();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {8, 24})
  void aFullDiskUnderTheCacheIsOneNoteAndTheRunGoesOn(int kilobytes) throws IOException {
    try (SmallDisk disk = SmallDisk.mount(folder.resolve("cache"), kilobytes)) {
      for (int i = 0; i < 2; i++) {
        Said said = program.run("review", "jobs");
        assertThat(said.out()).isEqualTo(whole.out());
        assertThat(said.code()).isEqualTo(whole.code());
        assertThat(said.err())
            .isEqualTo(
                "clampwise: results are not kept: the cache "
                    + folder
                    + "/cache/clampwise/results cannot be written\n");
      }
      assertThat(under("cache")).noneMatch(file -> file.toString().endsWith(".part"));
      assertThat(disk).isNotNull();
    }
  }

  @Test
  void foldersThatMayOnlyBeReadAreReadAndNothingElse() throws IOException {
    try (SmallDisk disk = SmallDisk.mount(folder.resolve("fixed"), 1000)) {
      copyJobs(folder.resolve("fixed"));
      Files.createDirectories(folder.resolve("fixed/cache"));
      disk.makeReadOnly();
      Program fixed =
          Program.in(folder.resolve("fixed")).with("XDG_CACHE_HOME", folder + "/fixed/cache");
      Said said = fixed.run("review", "jobs");
      assertThat(said.out()).isEqualTo(whole.out());
      assertThat(said.code()).isEqualTo(1);
      assertThat(said.err().lines()).hasSize(1);
      assertThat(said.err()).contains("results are not kept");
      Said report = fixed.run("review", "--no-cache", "--report", "all.sarif", "jobs");
      assertThat(report.code()).isEqualTo(2);
      assertThat(report.err())
          .isEqualTo("clampwise: all.sarif could not be written; choose a file you may write to\n");
    }
  }

  @Test
  void twoRunsOnOneCacheSayTheSame() throws Exception {
    for (int i = 0; i < 1; i++) {
      List<Process> runs = new ArrayList<>();
      for (int run = 0; run < 3; run++) {
        Path out = folder.resolve("out" + run);
        runs.add(
            program
                .command("review", "jobs")
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start());
      }
      for (int run = 0; run < 3; run++) {
        assertThat(runs.get(run).waitFor()).isEqualTo(1);
        assertThat(folder.resolve("out" + run)).hasContent(whole.out());
      }
    }
    assertThat(under("cache")).hasSize(EXAMPLES.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1970-01-02T00:00:00Z", "2200-01-01T00:00:00Z"})
  void timesOfFilesMayBeAnything(String time) throws IOException {
    saysTheSame(program.run("review", "jobs"));
    for (String in : List.of("cache", "jobs")) {
      for (Path file : under(in)) {
        Files.setLastModifiedTime(file, FileTime.from(Instant.parse(time)));
      }
    }
    saysTheSame(program.run("review", "jobs"));
    saysTheSame(program.run("review", "--no-cache", "--report", "again.sarif", "jobs"));
    assertThat(folder.resolve("again.sarif")).hasBinaryContent(wholeReport);
  }

  @Test
  void aCacheOfNonsenseIsAsGoodAsNone() throws IOException {
    saysTheSame(program.run("review", "jobs"));
    Random random = new Random(3);
    for (Path file : under("cache")) {
      byte[] bytes = Files.readAllBytes(file);
      bytes[random.nextInt(bytes.length)] ^= 4;
      Files.write(file, bytes);
    }
    saysTheSame(program.run("review", "jobs"));
    saysTheSame(program.run("review", "jobs"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobs", "jobs/barn-junior/job.yaml"})
  void aReaderWhoLeavesIsNoNews(String word) throws Exception {
    Process run = program.command("review", "--format", "json", word).start();
    try (InputStream out = run.getInputStream()) {
      assertThat(out.read()).isEqualTo('{');
    }
    String err = new String(run.getErrorStream().readAllBytes(), UTF_8);
    assertThat(run.waitFor()).isEqualTo(2);
    assertThat(err).isEmpty();
  }

  @Test
  void aReaderWhoLeavesDoesNotStopTheReports() throws Exception {
    Process run = program.command("review", "--report", "left.sarif", "jobs").start();
    run.getInputStream().close();
    assertThat(run.waitFor()).isEqualTo(2);
    assertThat(run.getErrorStream().readAllBytes()).isEmpty();
    assertThat(folder.resolve("left.sarif")).hasBinaryContent(wholeReport);
  }

  @ParameterizedTest
  @ValueSource(strings = {"jobs", "jobs/barn/job.yaml"})
  void anOutputThatTakesNothingIsSaid(String word) throws Exception {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "no full device here");
    Process run = program.command("review", word).redirectOutput(full.toFile()).start();
    String err = new String(run.getErrorStream().readAllBytes(), UTF_8);
    assertThat(run.waitFor()).isEqualTo(2);
    assertThat(err).isEqualTo("clampwise: the output could not be written\n");
  }

  @Test
  void aFileThatIsWrittenOnAndOnIsNotReviewedByHalves() throws Exception {
    Path job = folder.resolve("jobs/barn/job.yaml");
    byte[] text = Files.readAllBytes(job);
    Process run = program.command("review", "--lines", "jobs").redirectErrorStream(true).start();
    while (run.isAlive()) {
      Files.write(job, text);
      Files.write(job, "# more\n".repeat(20_000).getBytes(UTF_8), StandardOpenOption.APPEND);
    }
    String said = new String(run.getInputStream().readAllBytes(), UTF_8);
    boolean changed =
        said.contains("jobs/barn/job.yaml:1:1: error: a file that was changed while it was read");
    String rest = said.replaceAll("(?m)^jobs/barn/.*\n", "");
    assertThat(run.waitFor()).isIn(1, 2);
    assertThat(changed || run.exitValue() == 1 || said.contains("jobs/barn/job.yaml:1:1")).isTrue();
    Files.write(job, text);
    String still = program.run("review", "--lines", "jobs").out();
    assertThat(rest).isEqualTo(still.replaceAll("(?m)^jobs/barn/.*\n", ""));
    saysTheSame(program.run("review", "jobs"));
  }
}

package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the gate on real jobs in a real repository. */
class GateCommandsTest {

  private static final Path WORKSHOP = Path.of("examples/workshop-ribs/job.yaml");

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @TempDir private Path folder;
  private Path job;

  @BeforeEach
  void aCommittedJob() throws IOException, GitAPIException {
    job = Files.createDirectory(folder.resolve("jobs")).resolve("job.yaml");
    Files.copy(WORKSHOP, job);
    try (Git git = Git.init().setDirectory(folder.toFile()).setInitialBranch("main").call()) {
      git.add().addFilepattern(".").call();
      git.commit().setSign(false).setAuthor("a", "a@example.org").setMessage("one").call();
    }
  }

  private int run(String... words) {
    out.reset();
    err.reset();
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    return new Clampwise(console, ReviewDesk::new, List::of).run(words);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String complaint() {
    return err.toString(StandardCharsets.UTF_8);
  }

  private void change(String from, String to) throws IOException {
    String text = Files.readString(job);
    assertThat(text).contains(from);
    Files.writeString(job, text.replace(from, to));
  }

  private int accept(String... more) {
    List<String> words =
        new java.util.ArrayList<>(
            List.of("accept", job.toString(), "1", "--reason", "r", "--by", "b", "--on"));
    words.addAll(List.of("2026-03-01", "--until", "2026-04-01"));
    words.addAll(List.of(more));
    return run(words.toArray(String[]::new));
  }

  @Test
  void aFindingIsAcceptedByItsNumber() throws IOException {
    change("MC-35", "MC-40");
    assertThat(run("review", "-q", "--on", "2026-03-02", job.toString())).isEqualTo(1);
    assertThat(accept()).isZero();
    assertThat(printed()).contains("Accepted until 2026-04-01", "frame-outside-mid-clamp-range");
    assertThat(run("review", "-q", "--on", "2026-03-02", job.toString())).isZero();
    assertThat(printed()).contains("1 accepted deviation.");
    assertThat(run("review", "-q", "--on", "2026-04-02", job.toString())).isEqualTo(1);
  }

  @Test
  void whatIsWrongWithAnAcceptanceIsSaidAndNothingIsWritten() throws IOException {
    change("MC-35", "MC-40");
    assertThat(run("accept", job.toString())).isEqualTo(2);
    assertThat(run("accept", job.toString(), "1", "--by", "b")).isEqualTo(2);
    assertThat(complaint()).contains("--reason is missing");
    assertThat(accept("--until", "x")).isEqualTo(2);
    assertThat(
            run(
                "accept",
                job.toString(),
                "9",
                "--reason",
                "r",
                "--by",
                "b",
                "--until",
                "2999-01-01"))
        .isEqualTo(2);
    assertThat(complaint()).contains("there is no finding 9");
    assertThat(
            run(
                "accept",
                job.toString(),
                "frame-outside-mid-clamp-rang",
                "--reason",
                "r",
                "--by",
                "b",
                "--until",
                "2999-01-01"))
        .isEqualTo(2);
    assertThat(complaint()).contains("the nearest is frame-outside-mid-clamp-range");
    assertThat(
            run(
                "accept",
                job.toString(),
                "1",
                "--reason",
                "r",
                "--by",
                "b",
                "--until",
                "2020-01-01"))
        .isEqualTo(2);
    assertThat(complaint()).contains("is past");
    assertThat(folder.resolve("jobs/job.accepted.yaml")).doesNotExist();
  }

  @Test
  void severalAreAcceptedAtOnceOrNone() throws IOException {
    change("MC-35", "MC-40");
    change("EC-35", "EC-40");
    assertThat(accept("2", "frame-outside-end-clamp-range")).isZero();
    assertThat(run("review", "-q", "--on", "2026-03-02", job.toString())).isZero();
    assertThat(printed()).contains("2 accepted deviations.");
    Files.delete(folder.resolve("jobs/job.accepted.yaml"));
    assertThat(accept("9")).isEqualTo(2);
    assertThat(folder.resolve("jobs/job.accepted.yaml")).doesNotExist();
  }

  @Test
  void aRecordIsBegunAndShrinks() throws IOException {
    change("MC-35", "MC-40");
    assertThat(run("record", folder.toString())).isZero();
    assertThat(printed()).contains("1 known, 1 of them new, 0 solved");
    assertThat(run("review", "-q", job.toString())).isZero();
    assertThat(printed()).contains("1 known debt.");
    change("MC-40", "MC-35");
    assertThat(run("review", "--lines", job.toString())).isZero();
    assertThat(printed()).contains("[debt-solved]");
    assertThat(run("record", folder.toString())).isZero();
    assertThat(printed()).contains("0 known, 0 of them new, 1 solved");
    assertThat(run("review", "--lines", job.toString())).isZero();
    assertThat(printed()).doesNotContain("[debt-solved]");
  }

  @Test
  void aKnownDebtIsAcceptedByItsRule() throws IOException {
    change("MC-35", "MC-40");
    assertThat(run("record", folder.toString())).isZero();
    assertThat(
            run(
                "accept",
                job.toString(),
                "frame-outside-mid-clamp-range",
                "--reason",
                "r",
                "--by",
                "b",
                "--until",
                "2999-01-01"))
        .isZero();
    assertThat(run("review", "-q", job.toString())).isZero();
    assertThat(printed()).contains("1 accepted deviation");
  }

  @Test
  void aPolicyBehindALinkHoldsInARevisionToo() throws IOException, GitAPIException {
    Files.writeString(
        folder.resolve("pol.yaml"),
        "rules: {frame-outside-mid-clamp-range: {severity: off, reason: r}}\n");
    Files.createSymbolicLink(folder.resolve("jobs/clampwise-policy.yaml"), Path.of("../pol.yaml"));
    change("MC-35", "MC-40");
    try (Git git = Git.open(folder.toFile())) {
      git.add().addFilepattern(".").call();
      git.commit().setSign(false).setAuthor("a", "a@example.org").setMessage("two").call();
    }
    assertThat(run("compare", "HEAD", job.toString())).isZero();
    assertThat(printed()).contains("0 new, 0 worse, 0 better, 0 gone, 0 unchanged.");
  }

  @Test
  void aRecordThatCannotBeReadIsNotWrittenOver() throws IOException {
    Path record = Files.writeString(folder.resolve("clampwise-debts.yaml"), "debts: 3\n");
    assertThat(run("record", folder.toString())).isEqualTo(2);
    assertThat(record).hasContent("debts: 3\n");
  }

  @Test
  void aRevisionIsComparedWithTheWorkingTree() throws IOException {
    change("MC-35", "MC-40");
    change("at: [2400, 1900], modules: 5", "at: [2380, 1900], modules: 5");
    assertThat(run("compare", "main", job.toString())).isEqualTo(1);
    assertThat(printed())
        .contains("5 modules moved 20 mm left: W.R1C1, W.R2C1, W.R3C1, W.R4C1 and 1 more")
        .contains("mid clamp MC-35: 100 -> 0 (-100)", "mid clamp MC-40: 0 -> 100 (+100)")
        .contains("New (", "frame-outside-mid-clamp-range");
    assertThat(run("compare", "main:jobs/job.yaml", "HEAD:jobs/job.yaml")).isEqualTo(2);
  }

  @Test
  void theOtherWayRoundItIsGone() throws IOException {
    Path old = folder.resolve("old.yaml");
    Files.writeString(old, Files.readString(job).replace("MC-35", "MC-40"));
    assertThat(run("compare", old.toString(), job.toString())).isZero();
    assertThat(printed()).contains("Gone (1)").doesNotContain("New (");
    assertThat(run("compare", job.toString(), old.toString(), "--format", "markdown")).isOne();
    assertThat(printed()).contains("**1 new, 0 worse, 0 better, 0 gone");
    assertThat(run("compare", job.toString(), job.toString())).isZero();
    assertThat(printed()).contains("as it was", "0 new, 0 worse, 0 better, 0 gone");
  }

  @Test
  void wrongSidesOfAComparisonAreSaid() throws IOException {
    assertThat(run("compare", "nowhere", job.toString())).isEqualTo(2);
    assertThat(complaint()).contains("nowhere is neither a file nor a revision");
    assertThat(run("compare", job.toString())).isEqualTo(2);
    assertThat(run("compare", folder.toString(), job.toString())).isEqualTo(2);
    assertThat(complaint()).contains("a file is compared with a file");
    String empty = Files.createDirectory(folder.resolve("empty")).toString();
    assertThat(run("compare", empty, empty)).isEqualTo(2);
    assertThat(complaint()).contains("there is no job in either folder");
  }

  @Test
  void aPolicyIsShownWithThePlaceOfEveryValue() throws IOException {
    Files.writeString(folder.resolve("clampwise-policy.yaml"), "fail-on: warning\n");
    Files.writeString(folder.resolve("jobs/clampwise-policy.yaml"), "codes: {fire: ifc-2021}\n");
    assertThat(run("policy", job.toString())).isZero();
    assertThat(printed())
        .contains("fail-on: warning    # ", "clampwise-policy.yaml:1:10")
        .contains("fire: ifc-2021    # ");
    assertThat(run("policy", "--limits")).isZero();
    assertThat(printed()).contains("module-gap-least: 1/4 in");
    Files.writeString(folder.resolve("clampwise-policy.yaml"), "fail-onn: warning\n");
    assertThat(run("policy", job.toString())).isEqualTo(2);
    assertThat(complaint()).contains("fail-on");
    assertThat(run("review", "-q", job.toString())).isEqualTo(2);
  }

  @Test
  void aNamedPolicySetsTheThreshold() throws IOException {
    Path policy = Files.writeString(folder.resolve("p.yaml"), "fail-on: never\n");
    change("MC-35", "MC-40");
    assertThat(run("review", "-q", "--policy", policy.toString(), job.toString())).isZero();
    assertThat(run("review", "-q", "--policy", policy + "x", job.toString())).isEqualTo(2);
    assertThat(
            run(
                "review",
                "-q",
                "--fail-on",
                "error",
                "--policy",
                policy.toString(),
                job.toString()))
        .isEqualTo(1);
  }

  @Test
  void nothingIsRecordedWhereNoJobCouldBeRead() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Path record = folder.resolve("clampwise-debts.yaml");
    assertThat(run("record", empty.toString())).isEqualTo(2);
    assertThat(complaint()).contains("nothing is recorded");
    Files.writeString(empty.resolve("job.yaml"), "jbo: x\n");
    assertThat(run("record", empty.toString())).isEqualTo(2);
    assertThat(record).doesNotExist();
    Files.delete(empty.resolve("job.yaml"));
    change("MC-35", "MC-40");
    assertThat(run("record", folder.toString())).isZero();
    assertThat(record).content().contains("frame-outside-mid-clamp-range");
  }

  @Test
  void standardInputHasNoFileToWriteBeside() {
    assertThat(run("record", "-")).isEqualTo(2);
    assertThat(complaint()).contains("record takes a job file, not standard input");
    assertThat(run("accept", "-", "1", "--reason", "r", "--by", "b", "--until", "2999-01-01"))
        .isEqualTo(2);
    assertThat(complaint()).contains("accept takes a job file, not standard input");
  }

  @Test
  void aFolderIsAskedForThePolicyOfTheJobInIt() throws IOException {
    Files.writeString(job.resolveSibling("clampwise-policy.yaml"), "fail-on: note\n");
    assertThat(run("policy", job.resolveSibling("").toString())).isZero();
    assertThat(printed()).contains("fail-on: note");
  }

  @Test
  void aReasonOfNoWordsIsNone() throws IOException {
    String limit = "limits:\n  module-gap-least: {value: 20 mm, reason: \"\"}\n";
    Path policy = Files.writeString(folder.resolve("clampwise-policy.yaml"), limit);
    assertThat(run("policy", job.toString())).isEqualTo(2);
    assertThat(complaint()).contains("clampwise-policy.yaml:2:44: ", "a reason");
    Files.delete(policy);
    change("MC-35", "MC-40");
    assertThat(accept()).isZero();
    Path accepted = job.resolveSibling("job.accepted.yaml");
    Files.writeString(accepted, Files.readString(accepted).replace("by: b", "by: \" \""));
    assertThat(run("review", "-q", "--on", "2026-03-02", job.toString())).isEqualTo(2);
    assertThat(printed()).contains("the person or role that answers for it");
  }
}

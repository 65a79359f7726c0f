package clampwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.docs.Shell.Result;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The hook and the pipelines of {@code examples/gate} do in a scratch repository what is said. */
@DisabledOnOs(OS.WINDOWS)
class WiringInTest {
  private static final Path GATE = Path.of("examples/gate");

  @TempDir private Path home;
  private Shell shell;

  @BeforeEach
  void aRepositoryWithACleanJob() throws Exception {
    shell = Shell.in(home);
    Files.createDirectories(shell.folder().resolve("jobs"));
    Files.copy(Path.of("examples/barn/job.yaml"), job());
    done(
        "git init -q -b main . && git config user.email crew@example.org && git config user.name crew");
  }

  private Path job() {
    return shell.folder().resolve("jobs/barn.job.yaml");
  }

  private Result run(String command) throws Exception {
    return shell.run(command);
  }

  private String done(String command) throws Exception {
    Result result = run(command);
    assertThat(result.code()).as(command + "\n" + result.output()).isZero();
    return result.output();
  }

  private void clamp(String from, String to) throws IOException {
    String text = Files.readString(job());
    assertThat(text).contains("mid-clamp: " + from);
    Files.writeString(job(), text.replace("mid-clamp: " + from, "mid-clamp: " + to));
  }

  @Test
  void theHookReviewsWhatIsStagedAndRefusesErrors() throws Exception {
    Files.copy(GATE.resolve("pre-commit"), shell.folder().resolve(".git/hooks/pre-commit"));
    Files.writeString(shell.folder().resolve("README"), "jobs\n");
    done("git add README && git commit -q -m 'no job yet'");
    done("git add jobs && git commit -q -m 'a clean job'");
    clamp("MC-30", "MC-35");
    done("git add jobs");
    clamp("MC-35", "MC-30");

    Result refused = run("git commit -q -m 'an error is staged, the folder is clean'");

    assertThat(refused.code()).isEqualTo(1);
    assertThat(refused.output())
        .startsWith("jobs/barn.job.yaml:65:16: error: mid clamp MC-35")
        .contains("[frame-outside-mid-clamp-range]", "The commit is refused");
    assertThat(Files.readString(Path.of("docs/wiring-in.md"))).contains(refused.output());
    assertThat(done("git log --oneline").lines()).hasSize(2);
    done("git add jobs");
    clamp("MC-30", "MC-35");
    Files.writeString(shell.folder().resolve("README"), "more\n");
    done("git add README && git commit -q -m 'the folder has an error, what is staged is clean'");
    assertThat(done("git log --oneline").lines()).hasSize(3);
    assertThat(run("git commit -q -a -m 'all of it'").code()).isEqualTo(1);
  }

  @Test
  void theHookRefusesWhatCannotBeRead() throws Exception {
    Files.copy(GATE.resolve("pre-commit"), shell.folder().resolve(".git/hooks/pre-commit"));
    clamp("MC-30", "[");
    Result refused = run("git add . && git commit -q -m broken");

    assertThat(refused.code()).isNotZero();
    assertThat(refused.output()).contains("[not-readable]", "The commit is refused");
    assertThat(run("git log").code()).isNotZero();
  }

  /** The commands of a pipeline, with what stands for its secrets and its services. */
  private void pretend(String name, String script) throws IOException {
    Path program = home.resolve("bin").resolve(name);
    Files.writeString(program, "#!/bin/sh\n" + script + "\n");
    Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> yaml(String name) throws IOException {
    Load load = new Load(LoadSettings.builder().build());
    return (Map<String, Object>) load.loadFromString(Files.readString(GATE.resolve(name)));
  }

  @SuppressWarnings("unchecked")
  private static List<String> steps(String named) throws IOException {
    Map<String, Object> jobs = (Map<String, Object>) yaml("github-actions.yml").get("jobs");
    List<Map<String, Object>> steps =
        (List<Map<String, Object>>) ((Map<String, Object>) jobs.get("review")).get("steps");
    List<String> runs = new ArrayList<>();
    for (Map<String, Object> step : steps) {
      if (named.equals(step.get("name"))) {
        runs.add(String.valueOf(step.get("run")));
      }
    }
    assertThat(runs).as(named).hasSize(1);
    return runs;
  }

  @SuppressWarnings("unchecked")
  private static List<String> script(String job) throws IOException {
    return (List<String>) ((Map<String, Object>) yaml("gitlab-ci.yml").get(job)).get("script");
  }

  @Test
  void theFirstPipelineUploadsAndComments() throws Exception {
    clamp("MC-30", "MC-35");
    pretend("gh", "echo \"gh $*\"; test -s review.md");

    assertThat(run(steps("Review").get(0)).code()).isEqualTo(1);

    JsonNode sarif = new ObjectMapper().readTree(shell.folder().resolve("review.sarif").toFile());
    String place = "/runs/0/results/0/locations/0/physicalLocation/artifactLocation/uri";
    assertThat(sarif.at(place).asText()).isEqualTo("jobs/barn.job.yaml");
    assertThat(done("NUMBER=7; " + steps("Comment on the pull request").get(0)))
        .isEqualTo("gh pr comment 7 --body-file review.md --edit-last --create-if-none\n");
    assertThat(Files.readString(shell.folder().resolve("review.md"))).contains("MC-35");
  }

  @Test
  void theSecondPipelineTestsAndComments() throws Exception {
    pretend("curl", "printf '%s\\n' \"$@\"; test -s review.md");
    done(String.join("\n", script("design review")));
    assertThat(shell.folder().resolve("review.xml")).content().contains("<testsuites");
    clamp("MC-30", "MC-35");

    assertThat(run(String.join("\n", script("design review"))).code()).isEqualTo(1);

    assertThat(shell.folder().resolve("review.xml")).content().contains("<failure");
    assertThat(
            done(
                "COMMENT_TOKEN=t CI_API_V4_URL=https://git.example.org/api/v4 CI_PROJECT_ID=3"
                    + " CI_MERGE_REQUEST_IID=5; "
                    + script("design review comment").get(0)))
        .contains("PRIVATE-TOKEN: t\n", "body@review.md\n")
        .endsWith("https://git.example.org/api/v4/projects/3/merge_requests/5/notes\n");
  }

  @Test
  void theLineForOtherSystemsRuns() throws Exception {
    String line =
        Files.readAllLines(Path.of("docs/wiring-in.md")).stream()
            .filter(text -> text.startsWith("    clampwise review"))
            .findFirst()
            .orElseThrow();
    done(line.strip());
    assertThat(shell.folder().resolve("review.sarif")).exists();
  }

  /** In a namespace of its own there is no network, not even the machine itself. */
  @Test
  void aReviewNeedsNoNetwork() throws Exception {
    org.junit.jupiter.api.Assumptions.assumeTrue(run("unshare -n true").code() == 0, "unshare");
    assertThat(done("unshare -n cat /proc/net/route").lines().skip(1)).as("roads out").isEmpty();

    done("unshare -n clampwise review --report r.html --report r.pdf --report r.sarif jobs");
  }

  /** Java may ask the system which kinds of addresses there are; it does not speak to any. */
  @Test
  void aReviewSpeaksToNobody() throws Exception {
    org.junit.jupiter.api.Assumptions.assumeTrue(run("strace -V").code() == 0, "strace");
    for (String what : List.of("jobs/barn.job.yaml", "jobs")) {
      done("strace -f -e trace=%network -o calls clampwise review " + what);

      assertThat(Files.readAllLines(shell.folder().resolve("calls")))
          .isNotEmpty()
          .noneMatch(line -> line.matches(".*(connect|bind|listen|send\\w*)\\(.*AF_INET.*"));
    }
  }
}

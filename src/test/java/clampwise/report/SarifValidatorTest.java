package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import clampwise.review.Reviewer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * SARIF before the validator of the SARIF SDK, npm package
 * {@code @microsoft/sarif-multitool-linux}, which {@code npm ci} in {@code src/test/node} brings.
 * Where it is missing nothing is tested; a build server has to have it.
 */
class SarifValidatorTest {

  private static final Path VALIDATOR =
      Path.of("src/test/node/node_modules/@microsoft/sarif-multitool-linux/Sarif.Multitool");

  /** That the program has no page on the web is said, and true. */
  private static final String NO_PAGE = "does not provide 'informationUri'";

  @TempDir private Path folder;

  @BeforeEach
  void hasValidator() {
    if (System.getenv("CI") == null) {
      assumeTrue(Files.exists(VALIDATOR), "npm ci in src/test/node brings the validator");
    }
    assertThat(VALIDATOR).exists();
    assertThat(VALIDATOR.toFile().setExecutable(true)).isTrue();
  }

  private List<String> complaints(byte[] sarif) throws IOException, InterruptedException {
    Path log = Files.write(folder.resolve("log.sarif"), sarif);
    Path answer = folder.resolve("answer.txt");
    ProcessBuilder builder =
        new ProcessBuilder(
            VALIDATOR.toAbsolutePath().toString(),
            "validate",
            log.toString(),
            "--output",
            folder.resolve("answer.sarif").toString(),
            "--log",
            "ForceOverwrite");
    builder.environment().put("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "1");
    builder.redirectErrorStream(true).redirectOutput(answer.toFile()).start().waitFor();
    String said = Files.readString(answer, StandardCharsets.UTF_8);
    assertThat(said).contains("Analysis completed successfully");
    return said.lines()
        .filter(line -> line.contains("): error ") || line.contains("): warning "))
        .filter(line -> !line.contains(NO_PAGE))
        .toList();
  }

  @Test
  void theValidatorFindsNothingWrong() throws Exception {
    Reviewer reviewer = new Reviewer();
    Run run =
        new Run(
            List.of(
                reviewer.review(Path.of("examples/barn-junior/job.yaml")),
                reviewer.review(Path.of("examples/depot-surveyed/job.yaml"))),
            "0.1.0",
            1);
    assertThat(complaints(Snapshot.bytes(ReportKind.SARIF, run))).isEmpty();
    assertThat(complaints(Snapshot.bytes(ReportKind.SARIF, Snapshot.sample()))).isEmpty();
    assertThat(complaints(Snapshot.bytes(ReportKind.SARIF, HostileReview.run()))).isEmpty();
  }

  @Test
  void theValidatorFindsWhatIsWrong() throws Exception {
    String log = Snapshot.text(ReportKind.SARIF, Snapshot.sample());
    String wrong = log.replace("\"ruleIndex\" : ", "\"ruleIndex\" : 99");
    assertThat(complaints(wrong.getBytes(StandardCharsets.UTF_8)))
        .anyMatch(line -> line.contains("SARIF1009"));
  }
}

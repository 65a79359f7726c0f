package clampwise.gate;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.policy.Policy;
import clampwise.review.Reviewer;
import clampwise.source.Problems;
import clampwise.source.SourceText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the page of the gate shows can be used as it stands there. */
class GateDocsTest {

  private static final Pattern YAML = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL);

  private static String block(int number) throws IOException {
    Matcher blocks = YAML.matcher(Files.readString(Path.of("docs/gate.md")));
    for (int i = 0; i <= number; i++) {
      assertThat(blocks.find()).isTrue();
    }
    return blocks.group(1);
  }

  @Test
  void thePolicyOfThePageIsOne(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("policy.yaml"), block(0));
    Policy policy = new Reviewer(Optional.of(file)).policy(Path.of("job.yaml"));
    assertThat(policy.problems()).isEmpty();
    assertThat(policy.limits().byKey()).containsKey("module-gap-least");
    assertThat(policy.weights().off()).hasSize(1);
    assertThat(policy.underlay()).isPresent();
  }

  @Test
  void theDeviationOfThePageIsOne() throws IOException {
    Problems problems = new Problems();
    SourceText text = new SourceText("a", block(1).getBytes(StandardCharsets.UTF_8));
    Optional<DeviationFile> file = Beside.of(text, DeviationFile.class, problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(file.orElseThrow().accepted()).hasSize(1);
  }
}

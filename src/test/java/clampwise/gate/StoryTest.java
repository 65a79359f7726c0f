package clampwise.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** The story of a repository under the gate, told by its script. */
@DisabledOnOs(OS.WINDOWS)
class StoryTest {

  @Test
  void theGateLetsPassWhatItShouldAndNothingElse() throws IOException, InterruptedException {
    ProcessBuilder story = new ProcessBuilder("examples/gate/story.sh").redirectErrorStream(true);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    story
        .environment()
        .put(
            "CLAMPWISE",
            java
                + " -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -cp "
                + System.getProperty("java.class.path")
                + " clampwise.cli.Main");
    Process process = story.start();
    String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(told).isZero();
    assertThat(told)
        .containsSubsequence(
            "40 known, 40 of them new, 0 solved",
            "mid clamp MC-40 grips",
            "New (1)",
            "Accepted until 2026-06-30",
            "The deviation runs out",
            "mid clamp MC-40 grips",
            "deviation-expired",
            "40 debts before,");
  }
}

package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakeoffCommandTest {

  private static final String DAIRY = "examples/dairy-l-shaped/job.yaml";

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int run(String... arguments) {
    return run(InputStream.nullInputStream(), arguments);
  }

  private int run(InputStream in, String... arguments) {
    Console console = new Console(in, out, err, Map.of(), Screen.NONE);
    return new Clampwise(console, ReviewDesk::new, List::of).run(arguments);
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String complaint() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aTakeOffEndsWithWhatItIsNot() {
    assertThat(run("takeoff", DAIRY)).isZero();
    assertThat(printed())
        .startsWith("Take-off of Dairy, south slope\n" + DAIRY + "\n")
        .contains("The same modules on rails")
        .endsWith("authority having jurisdiction decide.\n");
    assertThat(complaint()).isEmpty();
  }

  @Test
  void severalJobsAreCountedOneAfterTheOther() {
    assertThat(run("takeoff", "--format", "csv", DAIRY, "examples/barn/job.yaml")).isZero();
    assertThat(printed().lines().filter(line -> line.startsWith("file,"))).hasSize(1);
    assertThat(printed()).contains(DAIRY + ",part,", "examples/barn/job.yaml,part,");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "0 %", "0%", "0.0"})
  void sparesMayBeLeftOut(String none) {
    assertThat(run("takeoff", "--format", "csv", "--spares", none, DAIRY)).isZero();
    assertThat(printed()).contains(",seam clamp,SC-A,102,0,102,");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-1 %", "101 %", "many", "3 mm", ""})
  void aShareThatIsNoneIsRefused(String wrong) {
    assertThat(run("takeoff", "--spares", wrong, DAIRY)).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("--spares takes a share from 0 % to 100 %");
    assertThat(printed()).isEmpty();
  }

  @Test
  void aJobThatCannotBeReadInFullIsSaidAndTheRestIsCounted(@TempDir Path folder) throws Exception {
    Path job = folder.resolve("job.yaml");
    Files.writeString(job, Files.readString(Path.of(DAIRY)) + "\nsurvay: {}\n");
    assertThat(run("takeoff", "--format", "csv", job.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(printed()).contains(",seam clamp,SC-A,102,");
    assertThat(complaint()).contains("job.yaml:").contains("survay").contains("nearest: survey");
  }

  @Test
  void aFileThatIsNotThereHasNoQuantities() {
    assertThat(run("takeoff", "nowhere.yaml")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(printed()).contains("Could not be read (1)").doesNotContain("Parts");
  }

  @Test
  void standardInputIsAJobToo() throws Exception {
    InputStream in = new ByteArrayInputStream(Files.readAllBytes(Path.of(DAIRY)));
    assertThat(run(in, "takeoff", "--format", "json", "-")).isZero();
    assertThat(printed()).contains("\"format\" : \"clampwise-takeoff/1\"", "<stdin>");
  }

  @Test
  void theSchemaOfTakeOffsIsPrintedOnRequest() {
    assertThat(run("schema", "--takeoff")).isZero();
    assertThat(printed()).contains("urn:clampwise:takeoff:1");
    assertThat(run("schema", "--takeoff", "--review")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("one schema at a time");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "fish"})
  void everyShellCompletesTheCommandItsOptionsAndItsFiles(String shell) {
    assertThat(run("completion", shell)).isZero();
    assertThat(printed()).contains("takeoff", "csv", "spares");
  }
}

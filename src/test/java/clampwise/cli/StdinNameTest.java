package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import clampwise.repository.Scratch;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StdinNameTest {

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();
  private Path job = Path.of("");
  private String text = "";

  @BeforeEach
  void aJobWithFilesBesideIt() throws IOException {
    Path depot = Path.of("examples/depot-surveyed");
    Scratch scratch = new Scratch(folder);
    for (String name : List.of("seams.csv", "attachments.csv")) {
      scratch.file("depot/" + name, Files.readString(depot.resolve(name)));
    }
    job = folder.resolve("depot/job.yaml");
    text = Files.readString(depot.resolve("job.yaml"));
  }

  private int run(String... arguments) {
    out.reset();
    ByteArrayInputStream in = new ByteArrayInputStream(text.getBytes(UTF_8));
    Console console = new Console(in, out, err, Map.of(), Screen.NONE);
    return new Clampwise(console, ReviewDesk::new, List::of).run(arguments);
  }

  @Test
  void aTextIsReviewedAsIfItWereSaved() throws IOException {
    int code = run("review", "--stdin-name", job.toString(), "-");
    String unsaved = out.toString(UTF_8);
    assertThat(job).doesNotExist();
    Files.writeString(job, text);
    assertThat(run("review", job.toString())).isEqualTo(code);
    assertThat(out.toString(UTF_8)).isEqualTo(unsaved).contains(job + ":");
  }

  @Test
  void thePolicyAboveTheNameHolds() throws IOException {
    Files.createDirectories(folder.resolve(".git"));
    new Scratch(folder).file("clampwise-policy.yaml", "nonsense: 1\n");
    assertThat(run("review", "--lines", "--stdin-name", job.toString(), "-")).isEqualTo(2);
    assertThat(out.toString(UTF_8)).contains("nonsense");
  }

  @Test
  void aNameWithoutStandardInputIsRefused() {
    assertThat(run("review", "--stdin-name", job.toString(), "other.yaml")).isEqualTo(2);
    assertThat(err.toString(UTF_8)).contains("--stdin-name names standard input; write -");
  }
}

package clampwise.docs;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.docs.FollowedPage.Run;
import clampwise.docs.FollowedPage.Step;
import clampwise.docs.FollowedPage.Write;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Who follows the page on own rules gets what it says. With {@code -Dupdate.docs} it is written.
 */
@DisabledOnOs(OS.WINDOWS)
class OwnRulesPageTest {
  private static final Path PAGE = Path.of("docs/own-rules.md");
  private static final Path EXAMPLE = Path.of("examples/own-rules");

  @Test
  void whoFollowsThePageGetsWhatItSays(@TempDir Path home) throws Exception {
    Shell shell = Shell.in(home);
    List<Run> said = new ArrayList<>();
    List<Run> done = new ArrayList<>();
    for (Step step : FollowedPage.of(PAGE).steps()) {
      if (step instanceof Write file) {
        Path target = shell.folder().resolve(file.file());
        Files.createDirectories(target.getParent());
        Files.writeString(target, file.text());
      } else if (step instanceof Run run) {
        said.add(run);
        done.add(new Run(run.command(), shell.run(run.command()).output()));
      }
    }
    if (Boolean.getBoolean("update.docs") || "".equals(System.getProperty("update.docs"))) {
      FollowedPage.rewrite(PAGE, said, done);
      return;
    }
    assertThat(said).isNotEmpty().isEqualTo(done);
  }

  @Test
  void theFilesOfThePageAreThoseOfTheExample() throws IOException {
    List<String> written = new ArrayList<>();
    for (Step step : FollowedPage.of(PAGE).steps()) {
      if (step instanceof Write file && file.file().startsWith("our-rules/")) {
        String name = file.file().substring("our-rules/".length());
        assertThat(file.text()).isEqualTo(Files.readString(EXAMPLE.resolve(name)));
        written.add(name);
      }
    }
    assertThat(written).filteredOn(name -> name.endsWith(".drl")).hasSize(3);
    assertThat(written).filteredOn(name -> name.endsWith(".md")).hasSize(3);
  }
}

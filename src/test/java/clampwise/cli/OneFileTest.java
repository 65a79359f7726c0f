package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The review of one file loads nothing that only many jobs need. */
class OneFileTest {

  private static List<String> loaded(String word) {
    Program program = Program.in(Path.of("").toAbsolutePath()).java("-Xlog:class+load");
    return program
        .run("review", word)
        .out()
        .lines()
        .filter(line -> line.contains("[class,load]"))
        .filter(line -> line.matches(".* (clampwise\\.(batch|repository)|org\\.eclipse)\\..*"))
        .toList();
  }

  @Test
  void oneFileNeedsNeitherGitNorACrew() {
    assertThat(loaded("examples/barn/job.yaml")).isEmpty();
  }

  @Test
  void aFolderNeedsBoth() {
    assertThat(loaded("examples/barn"))
        .anyMatch(line -> line.contains("clampwise.batch"))
        .anyMatch(line -> line.contains("org.eclipse.jgit"));
  }
}

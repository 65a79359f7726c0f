package clampwise.repository;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The git program says what it would list; skipped where there is none. */
class IgnoringLikeGitTest {

  private static final List<String> RULES =
      List.of(
          "a",
          "/a",
          "a/",
          "b/",
          "*.job.yaml",
          "!x.job.yaml",
          "**/b",
          "a/**",
          "!a/b/",
          "/b/*",
          "!/b/a",
          "x.*",
          "# a",
          "\\!x.job.yaml",
          "a/b",
          "?.job.yaml",
          "[xy].job.yaml",
          "");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void theSameFilesAreLeftOut(int seed) throws Exception {
    assumeTrue(git("--version") || System.getenv("CI") != null, "no git program");
    Random random = new Random(seed);
    Scratch scratch = new Scratch(folder).init();
    for (String in : List.of("", "a/", "b/", "a/b/", "b/a/", "a/b/a/")) {
      scratch.files(in + "x.job.yaml", in + "y.job.yaml", in + "long.job.yaml");
      if (random.nextBoolean()) {
        scratch.file(in + ".gitignore", rules(random));
      }
    }
    scratch.file(".git/info/exclude", rules(random));
    scratch.track(random.nextBoolean() ? "a/b/x.job.yaml" : "b/y.job.yaml");
    for (String start : List.of("", "a", "b", "a/b", "b/a")) {
      assertThat(found(start)).as(start).isEqualTo(listed(start));
    }
  }

  private TreeSet<String> found(String start) {
    Path from = folder.resolve(start);
    FolderWalk walk = new FolderWalk(from, IgnoringLikeGitTest::isYaml, Integer.MAX_VALUE).go();
    TreeSet<String> found = new TreeSet<>();
    walk.found().forEach(file -> found.add(folder.relativize(file).toString()));
    return found;
  }

  private static boolean isYaml(Path file) {
    return file.toString().endsWith(".yaml");
  }

  private static String rules(Random random) {
    StringBuilder rules = new StringBuilder();
    for (int i = random.nextInt(4); i >= 0; i--) {
      rules.append(RULES.get(random.nextInt(RULES.size()))).append('\n');
    }
    return rules.toString();
  }

  private TreeSet<String> listed(String start) throws IOException {
    Process git = start("ls-files", "--cached", "--others", "--exclude-standard");
    TreeSet<String> names =
        new TreeSet<>(new String(git.getInputStream().readAllBytes(), UTF_8).lines().toList());
    names.removeIf(
        name -> !name.endsWith(".yaml") || !Path.of(name).startsWith(start) && !start.isEmpty());
    return names;
  }

  private boolean git(String word) {
    try {
      return start(word).waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private Process start(String... words) throws IOException {
    List<String> command = new ArrayList<>(List.of("git"));
    command.addAll(List.of(words));
    return new ProcessBuilder(command).directory(folder.toFile()).start();
  }
}

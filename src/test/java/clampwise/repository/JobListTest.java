package clampwise.repository;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class JobListTest {

  @TempDir private Path folder;
  private Scratch scratch;

  @BeforeEach
  void scratch() {
    scratch = new Scratch(folder);
  }

  private List<String> found(String... words) {
    List<String> all =
        JobList.of(List.of(words).stream().map(scratch::path).toList()).stream()
            .map(job -> job.problem().map(problem -> "! " + problem.found()).orElse(job.name()))
            .toList();
    return all.stream().map(name -> name.replace(folder + "/", "")).toList();
  }

  @Test
  void jobsOfAFolderAreKnownByTheirNames() {
    scratch.files(
        "job.yaml",
        "a/job.yml",
        "a/job.json",
        "b/north.job.yaml",
        "b/south.job.yml",
        "b/x.job.json",
        "b/JOB.YAML",
        "prices.yaml",
        "b/myjob.yaml",
        "b/job.yaml.bak",
        "job/notes");
    assertThat(found(""))
        .containsExactly(
            "a/job.json",
            "a/job.yml",
            "b/JOB.YAML",
            "b/north.job.yaml",
            "b/south.job.yml",
            "b/x.job.json",
            "job.yaml");
  }

  @Test
  void jobsAreInTheOrderOfPeopleAndWordsKeepTheirs() {
    scratch.files("house 10/job.yaml", "house 9/job.yaml", "barn/job.yaml", "odd.yaml");
    assertThat(found("odd.yaml", "."))
        .containsExactly("odd.yaml", "barn/job.yaml", "house 9/job.yaml", "house 10/job.yaml");
  }

  @Test
  void aFileNamedTwiceIsThereOnce() throws IOException {
    scratch.files("a/job.yaml", "b/job.yaml");
    assertThat(found("a/job.yaml", "a/../a/job.yaml", "a", "*/job.yaml"))
        .containsExactly("a/job.yaml", "b/job.yaml");
  }

  @Test
  void aFileNamedOutrightIsTakenWhateverItsName() {
    scratch.init().file(".gitignore", "*.txt").files("roof.txt");
    assertThat(found("roof.txt", "gone.txt")).containsExactly("roof.txt", "gone.txt");
  }

  @Test
  void patternsGoThroughFoldersAndTakeAnyName() {
    scratch.files("x.yaml", "a/y.yaml", "a/b/z.yaml", "a/b/z.json", ".c/h.yaml", "a/.h.yaml");
    assertThat(found("**/*.yaml")).containsExactly("a/b/z.yaml", "a/y.yaml", "x.yaml");
    assertThat(found("*/*.yaml")).containsExactly("a/y.yaml");
    assertThat(found("a/**")).containsExactly("a/b/z.json", "a/b/z.yaml", "a/y.yaml");
    assertThat(found("{a,q}/[x-z].yaml")).containsExactly("a/y.yaml");
    assertThat(found("?.yaml")).containsExactly("x.yaml");
    assertThat(found(".c/*.yaml", "a/.*.yaml")).containsExactly(".c/h.yaml", "a/.h.yaml");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFileWhoseNameHoldsTheSignsOfPatternsIsThatFile() {
    scratch.files("[draft]*.yaml", "d.yaml");
    assertThat(found("[draft]*.yaml")).containsExactly("[draft]*.yaml");
    assertThat(found("[draft*.yaml")).containsExactly("[draft]*.yaml");
    assertThat(found("[draf]*.yaml")).containsExactly("d.yaml");
  }

  @Test
  void nothingFoundIsAProblemThatSaysSo() throws IOException {
    Files.createDirectories(folder.resolve("empty"));
    scratch.files("other/readme.md");
    assertThat(found("empty", "other", "*.yaml", "no/*.yaml"))
        .containsExactly(
            "! a folder without a job",
            "! a folder without a job",
            "! a pattern that no file matches",
            "! a pattern in a folder that does not exist");
  }

  @Test
  void whatGitIgnoresIsLeftOutOfFoldersAndPatterns() {
    scratch.init().file(".gitignore", "/build/\n*.old.job.yaml\n!kept.old.job.yaml\n");
    scratch.file("sub/.gitignore", "secret/\n!../build\n/only-here.job.yaml\n");
    scratch.file(".git/info/exclude", "mine.job.yaml\n");
    scratch.files(
        "job.yaml",
        "build/job.yaml",
        "sub/build/job.yaml",
        "a.old.job.yaml",
        "kept.old.job.yaml",
        "sub/secret/x/job.yaml",
        "sub/only-here.job.yaml",
        "only-here.job.yaml",
        "mine.job.yaml",
        "sub/mine.job.yaml",
        ".git/job.yaml");
    assertThat(found("."))
        .containsExactly(
            "job.yaml", "kept.old.job.yaml", "only-here.job.yaml", "sub/build/job.yaml");
    assertThat(found("**/*.yaml")).isEqualTo(found("."));
    assertThat(found("sub")).containsExactly("sub/build/job.yaml");
    assertThat(found("build", "sub/secret/x", "sub/secret/*/*"))
        .containsExactly(
            "! a folder without a job, but for what git ignores",
            "! a folder without a job, but for what git ignores",
            "! a pattern that no file matches, but for what git ignores");
  }

  @Test
  void whatGitTracksIsNotIgnoredWhateverItsRulesSay() {
    scratch.init().file(".gitignore", "build/\n").files("build/job.yaml", "build/x.job.yaml");
    scratch.track("build/job.yaml");
    assertThat(found(".")).containsExactly("build/job.yaml");
    assertThat(found("build")).containsExactly("build/job.yaml");
  }

  @Test
  void aRepositoryInsideAFolderHasRulesOfItsOwn() {
    scratch
        .file(".gitignore", "*.job.yaml\n")
        .files("a.job.yaml", "in/b.job.yaml", "in/c.job.yaml");
    new Scratch(folder.resolve("in")).init().file(".gitignore", "c.*\n");
    assertThat(found(".")).containsExactly("a.job.yaml", "in/b.job.yaml");
  }

  @Test
  void looksForJobsWithoutWritingAnything() throws IOException {
    scratch.init().files("a/job.yaml");
    scratch.commit();
    List<Path> before = all();
    found(".");
    assertThat(all()).isEqualTo(before);
  }

  private List<Path> all() throws IOException {
    try (var files = Files.walk(folder)) {
      return files.sorted().toList();
    }
  }

  @Test
  void linksToFoldersAreNotFollowedSoThatNoLoopIs() throws IOException {
    scratch.files("a/job.yaml", "real/roof.yaml");
    assumeTrue(links("a/again", folder));
    links("a/job.yml", folder.resolve("real/roof.yaml"));
    links("a/lost.job.yaml", folder.resolve("gone.yaml"));
    assertThat(found(".")).containsExactly("a/job.yaml", "a/job.yml");
    assertThat(found("a/again/real/*")).containsExactly("a/again/real/roof.yaml");
  }

  private boolean links(String name, Path target) {
    try {
      Files.createSymbolicLink(folder.resolve(name), target);
      return true;
    } catch (IOException | UnsupportedOperationException e) {
      return false;
    }
  }
}

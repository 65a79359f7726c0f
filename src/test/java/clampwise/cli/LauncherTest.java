package clampwise.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The launcher in a folder of its own, with a Java and a Maven that only say they were called. */
@DisabledOnOs(OS.WINDOWS)
class LauncherTest {

  private static final Instant BUILT = Instant.parse("2026-03-02T12:00:00Z");

  @TempDir private Path home;

  @BeforeEach
  void aProjectThatWasBuilt() throws IOException {
    Files.copy(Path.of("clampwise"), home.resolve("clampwise"), StandardCopyOption.COPY_ATTRIBUTES);
    script(
        "bin/java",
        "case $1 in -version) echo 'openjdk version \"17.0.1\"' >&2;; *) echo run;; esac");
    script("bin/mvn", "echo jar > target/clampwise.jar; printf '\\033[0m'; echo built >&2");
    write("target/clampwise.jar", BUILT);
    write("src/main/java/Main.java", BUILT.minusSeconds(60));
    write("rules/clamps/rule.drl", BUILT.minusSeconds(60));
    write("shared/parts.yaml", BUILT.minusSeconds(60));
    write("pom.xml", BUILT.minusSeconds(60));
  }

  @Test
  void aBuildNewerThanItsSourcesIsRunAsItIs() throws Exception {
    assertThat(output()).isEqualTo("run\n");
  }

  @ParameterizedTest
  @CsvSource({"C, C.UTF-8", "POSIX, C.UTF-8", "de_DE.ISO-8859-1, de_DE.ISO-8859-1"})
  void inThePlainLocaleNamesMayHaveAllLetters(String locale, String run) throws Exception {
    script(
        "bin/java",
        "case $1 in -version) echo 'openjdk version \"17.0.1\"' >&2;; *) echo $LC_ALL;; esac");
    assertThat(output(Map.of("LC_ALL", locale))).isEqualTo(run + "\n");
  }

  @Test
  void aChangedRuleIsBuiltBeforeTheRun() throws Exception {
    write("rules/clamps/rule.drl", BUILT.plusSeconds(60));

    assertThat(output())
        .isEqualTo(
            "clampwise: the sources have changed, building; this takes a minute or two\n"
                + "run\n");
    assertThat(output()).isEqualTo("run\n");
    assertThat(home.resolve("target/launcher.log")).content().endsWith("built\n");
  }

  @Test
  void aChangedPomIsBuiltBeforeTheRun() throws Exception {
    write("pom.xml", BUILT.plusSeconds(60));

    assertThat(output()).startsWith("clampwise: the sources have changed").endsWith("\nrun\n");
  }

  @Test
  void aChangedTestNeedsNoBuild() throws Exception {
    write("src/test/java/MainTest.java", BUILT.plusSeconds(60));

    assertThat(output()).isEqualTo("run\n");
  }

  @Test
  void aFolderWithoutSourcesIsNeverBuiltAnew() throws Exception {
    Files.delete(home.resolve("src/main/java/Main.java"));
    Files.delete(home.resolve("src/main/java"));
    Files.delete(home.resolve("src/main"));
    Files.delete(home.resolve("src"));
    write("rules/clamps/rule.drl", BUILT.plusSeconds(60));

    assertThat(output()).isEqualTo("run\n");
  }

  @Test
  void theFirstRunBuilds() throws Exception {
    Files.delete(home.resolve("target/clampwise.jar"));

    assertThat(output()).contains("first run, building").endsWith("minute or two\nrun\n");
  }

  @Test
  void aBuildThatFailsSaysWhatMavenSaidWithoutItsColours() throws Exception {
    script("bin/mvn", "printf '\\033[1;31mno such plugin\\033[m\\n'; exit 1");
    write("pom.xml", BUILT.plusSeconds(60));

    assertThat(output())
        .endsWith("minute or two\nno such plugin\nclampwise: the build failed; see above\n");
  }

  private String output() throws IOException, InterruptedException {
    return output(Map.of());
  }

  private String output(Map<String, String> variables) throws IOException, InterruptedException {
    ProcessBuilder launcher = new ProcessBuilder(home.resolve("clampwise").toString(), "review");
    Map<String, String> environment = launcher.environment();
    environment.put("PATH", home.resolve("bin") + ":" + environment.get("PATH"));
    environment.remove("JAVA_HOME");
    environment.putAll(variables);
    Process run = launcher.redirectErrorStream(true).start();
    String output = new String(run.getInputStream().readAllBytes(), UTF_8);
    run.waitFor();
    return output;
  }

  private void script(String name, String body) throws IOException {
    Path file = home.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "#!/bin/sh\n" + body + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private void write(String name, Instant changed) throws IOException {
    Path file = home.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, name);
    Files.setLastModifiedTime(file, FileTime.from(changed));
  }
}

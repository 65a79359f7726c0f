package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Files appear whole or not at all. */
class WholeFileTest {

  @Test
  void aFileTakesThePlaceOfWhatStoodThere(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("sheet.md"), "old and longer");
    WholeFile.write(file.toString(), "new");
    assertThat(file).hasContent("new");
    assertThat(names(folder)).containsExactly("sheet.md");
  }

  @Test
  void aFolderThatIsMissingIsNamedAndNothingIsLeftBehind(@TempDir Path folder) throws IOException {
    String file = folder.resolve("missing/sheet.md").toString();
    assertThatThrownBy(() -> WholeFile.write(file, "new"))
        .isInstanceOf(UsageException.class)
        .hasMessageContaining("the folder of " + file + " does not exist");
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void aFolderInPlaceOfAFileIsLeftAlone(@TempDir Path folder) throws IOException {
    Path taken = Files.createDirectory(folder.resolve("sheet.md"));
    assertThatThrownBy(() -> WholeFile.write(taken.toString(), "new"))
        .isInstanceOf(UsageException.class)
        .hasMessageContaining("could not be written");
    assertThat(names(folder)).containsExactly("sheet.md");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aNewFileMayBeReadAsAnyOtherNewFile(@TempDir Path folder) throws IOException {
    Path other = Files.createFile(folder.resolve("other"));
    WholeFile.write(folder.resolve("sheet.md").toString(), "new");
    assertThat(Files.getPosixFilePermissions(folder.resolve("sheet.md")))
        .isEqualTo(Files.getPosixFilePermissions(other));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFileKeepsWhoMayReadIt(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("sheet.md"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    WholeFile.write(file.toString(), "new");
    assertThat(file).hasContent("new");
    assertThat(Files.getPosixFilePermissions(file))
        .isEqualTo(PosixFilePermissions.fromString("rw-r-----"));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFileThatMayNotBeWrittenIsLeftAlone(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("sheet.md"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    Assumptions.assumeFalse(Files.isWritable(file), "the superuser may write everything");
    assertThatThrownBy(() -> WholeFile.write(file.toString(), "new"))
        .hasMessageContaining("could not be written");
    assertThat(file).hasContent("old");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkStaysALink(@TempDir Path folder) throws IOException {
    Path end = Files.writeString(folder.resolve("end.md"), "old");
    Path link = Files.createSymbolicLink(folder.resolve("sheet.md"), Path.of("end.md"));
    Path open = Files.createSymbolicLink(folder.resolve("open.md"), Path.of("later.md"));
    WholeFile.write(link.toString(), "new");
    WholeFile.write(open.toString(), "first");
    assertThat(link).isSymbolicLink();
    assertThat(end).hasContent("new");
    assertThat(folder.resolve("later.md")).hasContent("first");
    assertThat(names(folder)).hasSize(4);
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFolderThatTakesNoFilesIsNotSaidToBeMissing() {
    assertThatThrownBy(() -> WholeFile.write("/proc/sheet.md", "new"))
        .isInstanceOf(UsageException.class)
        .hasMessage("/proc/sheet.md could not be written; choose a file you may write to");
  }

  private static Stream<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList().stream();
    }
  }
}

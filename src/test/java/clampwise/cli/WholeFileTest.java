package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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

  private static Stream<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList().stream();
    }
  }
}

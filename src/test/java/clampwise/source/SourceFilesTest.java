package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SourceFilesTest {

  @TempDir private Path outer;
  private final Problems problems = new Problems();
  private Path folder = Path.of("");

  @BeforeEach
  void writeFiles() throws IOException {
    folder = Files.createDirectory(outer.resolve("job"));
    Files.writeString(folder.resolve("seams.csv"), "seam,along\n");
    Files.writeString(outer.resolve("secret.csv"), "seam,along\n");
  }

  @Test
  void aFileBesideTheJobIsRead() {
    assertThat(beside("seams.csv")).isPresent();
    assertThat(beside("./seams.csv")).isPresent();
    assertThat(problems.isEmpty()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"../secret.csv", "a/../../secret.csv", "/etc/hostname", "..", "", "a\u0000b"})
  void aPathThatLeadsOutsideIsRefused(String path) {
    assertThat(beside(path)).isEmpty();
    assertThat(said()).containsExactly("the path \"" + path + "\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"longer than before", "seam,alonG\n", ""})
  void aFileThatIsChangedWhileItIsReadIsAProblem(String change) throws IOException {
    Path file = folder.resolve("seams.csv");
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000));
    SourceFiles.Opening changing =
        opened -> {
          byte[] read = Files.readAllBytes(opened);
          return new InputStream() {
            private int at;

            @Override
            public int read() throws IOException {
              if (at == 3) {
                Files.writeString(file, change);
              }
              return at < read.length ? read[at++] : -1;
            }
          };
        };
    assertThat(SourceFiles.bytes(file, Span.startOf("seams.csv"), problems, changing)).isEmpty();
    assertThat(said()).containsExactly("a file that was changed while it was read");
  }

  @Test
  void aFileThatIsAskedForTwiceAndChangedBetweenIsNotKnown() throws IOException {
    SourceFiles files = SourceFiles.in(folder);
    files.read(name("seams.csv"), problems);
    assertThat(files.asked().get("seams.csv")).isPresent();
    Files.writeString(folder.resolve("seams.csv"), "other\n");
    files.read(name("seams.csv"), problems);
    files.read(name("gone.csv"), problems);
    assertThat(files.asked().values()).hasSize(2).allMatch(Optional::isEmpty);
    assertThat(files.look("seams.csv")).isPresent();
    assertThat(files.look("gone.csv")).isEmpty();
    assertThat(files.place("../x")).isEmpty();
  }

  @Test
  void aLinkThatLeadsOutsideIsRefused() throws IOException {
    Files.createSymbolicLink(folder.resolve("link.csv"), outer.resolve("secret.csv"));
    assertThat(beside("link.csv")).isEmpty();
    assertThat(said()).containsExactly("the path \"link.csv\"");
  }

  @Test
  void aJobHasNoFilesIfItHasNoFolder() {
    assertThat(SourceFiles.none().read(name("seams.csv"), problems)).isEmpty();
    assertThat(said()).containsExactly("the path \"seams.csv\"");
  }

  @Test
  void aFolderNamesTheJobInIt() throws IOException {
    assertThat(SourceFiles.read(folder, problems)).isEmpty();
    Files.writeString(folder.resolve("job.yaml"), "job: Barn\n");
    Problems more = new Problems();
    assertThat(SourceFiles.read(folder, more)).isEmpty();
    assertThat(problems.sorted().get(0).expected()).isEqualTo("a file");
    assertThat(more.sorted().get(0).expected()).endsWith("job/job.yaml");
  }

  @Test
  void aMissingFileNamesTheNearestOne() {
    assertThat(beside("seam.csv")).isEmpty();
    assertThat(problems.sorted().get(0).nearest()).contains("seams.csv");
    assertThat(problems.sorted().get(0).at()).hasToString("job.yaml:7:5");
  }

  @Test
  void aFolderIsNoFile() {
    assertThat(SourceFiles.read(folder, problems)).isEmpty();
    assertThat(beside(".")).isEmpty();
    assertThat(said()).contains("a folder");
  }

  @Test
  void aMissingJobIsReportedAtItsStart() {
    assertThat(SourceFiles.read(folder.resolve("jobb.yaml"), problems)).isEmpty();
    assertThat(said()).containsExactly("no file named \"jobb.yaml\"");
  }

  @Test
  void anUnreadableFileIsReported() throws IOException {
    Path locked = folder.resolve("seams.csv");
    assumeThat(Files.getFileStore(locked).supportsFileAttributeView("posix")).isTrue();
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("---------"));
    // Who may do everything may also read a locked file.
    assumeThat(Files.isReadable(locked)).isFalse();
    assertThat(SourceFiles.read(locked, problems)).isEmpty();
    assertThat(said()).containsExactly("a file that may not be read");
  }

  @Test
  void aFileThatIsTooLargeIsRefused() throws IOException {
    Files.write(folder.resolve("big.csv"), new byte[YamlReader.LARGEST_BYTES + 1]);
    assertThat(beside("big.csv")).isEmpty();
    assertThat(said()).containsExactly("more than 10 MB");
  }

  private Optional<SourceFiles.Beside> beside(String name) {
    return SourceFiles.beside(folder.resolve("job.yaml")).read(name(name), problems);
  }

  private static Node.Scalar name(String text) {
    Position at = new Position(7, 5);
    return new Node.Scalar(text, false, new Span("job.yaml", at, at));
  }

  private List<String> said() {
    return problems.sorted().stream().map(Problem::found).toList();
  }
}

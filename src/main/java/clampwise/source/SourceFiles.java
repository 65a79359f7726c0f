package clampwise.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads files of one folder and nothing outside it; what cannot be read is a problem. */
public final class SourceFiles {

  private static final int MOST_NEIGHBOURS = 500;

  private final Optional<Path> folder;
  private final List<SourceText> taken = new ArrayList<>();
  private final Map<String, Optional<SourceText>> asked = new LinkedHashMap<>();

  private SourceFiles(Optional<Path> folder) {
    this.folder = folder;
  }

  /** A text of a file beside the job. */
  public record Beside(String file, String text) {}

  /** The files of a folder. */
  public static SourceFiles in(Path folder) {
    return new SourceFiles(Optional.of(folder));
  }

  /** The files beside a file. */
  public static SourceFiles beside(Path file) {
    Path parent = file.getParent();
    return in(parent == null ? Path.of("") : parent);
  }

  /** No files at all, for a job that has no folder. */
  public static SourceFiles none() {
    return new SourceFiles(Optional.empty());
  }

  /** The name of a file in messages: as the user gave it, with forward slashes. */
  public static String nameOf(Path file) {
    return file.toString().replace('\\', '/');
  }

  /** What was read of this folder, in the order in which it was read. */
  public List<SourceText> taken() {
    return List.copyOf(taken);
  }

  /** A file asked for twice that was changed in between is not known. */
  private static Optional<SourceText> same(Optional<SourceText> one, Optional<SourceText> other) {
    boolean same = one.map(SourceText::sha256).equals(other.map(SourceText::sha256));
    return same ? one : Optional.empty();
  }

  /** What was asked for by name, as it was read; empty where it could not be. */
  public Map<String, Optional<SourceText>> asked() {
    return Collections.unmodifiableMap(asked);
  }

  /** What stands under a name now, without keeping it; empty where it cannot be read. */
  public Optional<SourceText> look(String name) {
    Problems problems = new Problems();
    Node.Scalar written = new Node.Scalar(name, false, Span.startOf(name));
    return inside(written, problems).flatMap(file -> sourceText(file, written.at(), problems));
  }

  /** Where a file of this name lies, or would lie; empty if that is not in this folder. */
  public Optional<Path> place(String name) {
    return folder.flatMap(in -> resolve(in, name));
  }

  /** Keeps a text that was read elsewhere, such as the job itself. */
  public void take(SourceText text) {
    taken.add(text);
  }

  /** The bytes of a file that the user named; empty, after a problem, if it cannot be read. */
  public static Optional<byte[]> read(Path file, Problems problems) {
    Span start = Span.startOf(nameOf(file));
    if (Files.isDirectory(file)) {
      problems.add(Problem.of(start, "a folder", jobIn(file)));
      return Optional.empty();
    }
    return bytes(file, start, problems);
  }

  private static String jobIn(Path folder) {
    Path job = folder.resolve("job.yaml");
    return Files.isRegularFile(job) ? "a file, such as " + nameOf(job) : "a file";
  }

  /** The text of a file in this folder, named at a place of the job. */
  public Optional<Beside> read(Node.Scalar name, Problems problems) {
    Optional<SourceText> found =
        inside(name, problems).flatMap(file -> sourceText(file, name.at(), problems));
    asked.merge(name.text(), found, SourceFiles::same);
    return found.flatMap(text -> text(text, problems));
  }

  private static Optional<SourceText> sourceText(Path file, Span namedAt, Problems problems) {
    return bytes(file, namedAt, problems).map(read -> new SourceText(nameOf(file), read));
  }

  private Optional<Beside> text(SourceText read, Problems problems) {
    take(read);
    return Utf8.decode(read.file(), read.bytes(), problems)
        .map(text -> new Beside(read.file(), text));
  }

  private Optional<Path> inside(Node.Scalar name, Problems problems) {
    Optional<Path> file = folder.flatMap(in -> resolve(in, name.text()));
    if (file.isEmpty()) {
      problems.add(
          Problem.of(
              name.at(), "the path \"" + name.text() + "\"", "a file in the folder of the job"));
    } else if (Files.exists(file.get()) && !Files.isRegularFile(file.get())) {
      problems.add(Problem.of(name.at(), "\"" + name.text() + "\", which is no file", "a file"));
      return Optional.empty();
    }
    return file;
  }

  private static Optional<Path> resolve(Path folder, String name) {
    try {
      Path inner = Path.of(name).normalize();
      boolean leaves = inner.isAbsolute() || inner.startsWith("..") || name.isBlank();
      Path file = folder.resolve(inner);
      return leaves || linksOutside(folder, file) ? Optional.empty() : Optional.of(file);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static boolean linksOutside(Path folder, Path file) {
    try {
      return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
          && !file.toRealPath().startsWith(folder.toAbsolutePath().toRealPath());
    } catch (IOException e) {
      return true;
    }
  }

  private static Optional<byte[]> bytes(Path file, Span at, Problems problems) {
    return bytes(file, at, problems, Files::newInputStream);
  }

  /** Opens a file. */
  @FunctionalInterface
  interface Opening {
    InputStream open(Path file) throws IOException;
  }

  /** The bytes of a file that was the same before and after it was read. */
  static Optional<byte[]> bytes(Path file, Span at, Problems problems, Opening opening) {
    try (InputStream in = opening.open(file)) {
      BasicFileAttributes before = Files.readAttributes(file, BasicFileAttributes.class);
      byte[] bytes = in.readNBytes(YamlReader.LARGEST_BYTES + 1);
      BasicFileAttributes after = Files.readAttributes(file, BasicFileAttributes.class);
      if (bytes.length > YamlReader.LARGEST_BYTES) {
        problems.add(YamlReader.tooLarge(at));
      } else if (isSame(before, after, bytes.length)) {
        return Optional.of(bytes);
      } else {
        problems.add(Problem.of(at, "a file that was changed while it was read", "a file at rest"));
      }
    } catch (NoSuchFileException e) {
      problems.add(missing(file, at));
    } catch (AccessDeniedException e) {
      problems.add(Problem.of(at, "a file that may not be read", "permission to read it"));
    } catch (IOException e) {
      problems.add(Problem.of(at, "a file that cannot be read", "a readable file"));
    }
    return Optional.empty();
  }

  private static boolean isSame(BasicFileAttributes before, BasicFileAttributes after, int read) {
    boolean same =
        before.size() == after.size()
            && before.lastModifiedTime().equals(after.lastModifiedTime())
            && Objects.equals(before.fileKey(), after.fileKey());
    // Pipes and files that the system makes up have no size of their own.
    return !before.isRegularFile() || same && (before.size() == 0 || before.size() == read);
  }

  private static Problem missing(Path file, Span at) {
    String name = String.valueOf(file.getFileName());
    return new Problem(
        at,
        "no file named \"" + name + "\"",
        "a file that exists",
        Nearest.to(name, neighbours(file)));
  }

  private static List<String> neighbours(Path file) {
    Path parent = file.getParent();
    List<String> names = new ArrayList<>();
    try (Stream<Path> files = Files.list(parent == null ? Path.of("") : parent)) {
      files.limit(MOST_NEIGHBOURS).forEach(path -> names.add(String.valueOf(path.getFileName())));
    } catch (IOException e) {
      return List.of();
    }
    names.sort(null);
    return names;
  }
}

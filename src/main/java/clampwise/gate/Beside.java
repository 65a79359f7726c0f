package clampwise.gate;

import clampwise.job.RecordReader;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.SourceText;
import clampwise.source.YamlReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * A file of the gate as it was read.
 *
 * @param content what it says; empty where there is no such file or it cannot be read
 * @param sources the file as it was read, if it was
 * @param problems what could not be read of it
 */
record Beside<T>(Optional<T> content, List<SourceText> sources, List<Problem> problems) {

  /**
   * Reads a file that may be missing.
   *
   * @param check what else has to be so in it
   */
  static <T> Beside<T> read(Path file, Class<T> type, BiConsumer<T, Problems> check) {
    if (!Files.exists(file)) {
      return new Beside<>(Optional.empty(), List.of(), List.of());
    }
    Problems problems = new Problems();
    String name = SourceFiles.nameOf(file);
    Optional<SourceText> text =
        SourceFiles.read(file, problems).map(bytes -> new SourceText(name, bytes));
    Optional<T> content = text.flatMap(source -> of(source, type, problems));
    content.ifPresent(read -> check.accept(read, problems));
    return new Beside<>(content, text.stream().toList(), problems.sorted());
  }

  /** What a text says; each thing in it that cannot be read is a problem and left out. */
  static <T> Optional<T> of(SourceText source, Class<T> type, Problems problems) {
    if (source.saysNothing()) {
      return Optional.empty();
    }
    Optional<Node> root = YamlReader.readPart(source.file(), source.bytes(), problems).whole();
    return root.filter(node -> !node.isEmpty())
        .flatMap(node -> RecordReader.read(node, type, problems));
  }
}

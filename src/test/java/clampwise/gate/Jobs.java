package clampwise.gate;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** The jobs of the examples, and the same jobs written in another way. */
final class Jobs {

  private Jobs() {}

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("examples"))) {
      return folders
          .map(folder -> folder.resolve("job.yaml"))
          .filter(Files::exists)
          .sorted()
          .toList()
          .stream();
    }
  }

  /** The job with its keys in the opposite order, other indentation, comments and empty lines. */
  static String rewritten(Path job) throws IOException {
    Node root = YamlReader.read("job", Files.readString(job), new Problems()).orElseThrow();
    StringBuilder text = new StringBuilder("# moved\n\n\n");
    write(root, 0, text);
    return text.toString();
  }

  private static void write(Node node, int indent, StringBuilder text) {
    String space = " ".repeat(indent);
    if (node instanceof Node.Mapping mapping) {
      List<Node.Entry> entries = new ArrayList<>(mapping.entries());
      Collections.reverse(entries);
      for (Node.Entry entry : entries) {
        text.append(space).append(scalar(entry.key())).append(':');
        value(entry.value(), indent, text);
      }
    } else if (node instanceof Node.Sequence list) {
      for (Node item : list.items()) {
        text.append(space).append('-');
        value(item, indent, text);
      }
    }
  }

  private static void value(Node value, int indent, StringBuilder text) {
    if (value instanceof Node.Scalar scalar) {
      text.append(' ').append(scalar(scalar)).append("   # as before\n");
    } else if (isEmpty(value)) {
      text.append(value instanceof Node.Mapping ? " {}\n" : " []\n");
    } else {
      text.append('\n');
      write(value, indent + 3, text);
    }
  }

  private static boolean isEmpty(Node node) {
    return node instanceof Node.Mapping mapping
        ? mapping.entries().isEmpty()
        : ((Node.Sequence) node).items().isEmpty();
  }

  private static String scalar(Node.Scalar scalar) {
    String text = scalar.text();
    return scalar.quoted() ? "'" + text.replace("'", "''") + "'" : text;
  }
}

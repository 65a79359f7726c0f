package clampwise.job;

import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.Span;
import clampwise.source.YamlReader;
import java.util.List;
import java.util.Optional;

/** Reads the parts and module types of a catalogue. */
public final class ShelfReader {

  private ShelfReader() {}

  /**
   * The catalogue of two texts.
   *
   * @param parts parts by kind and name
   * @param modules module types by name
   */
  public static Optional<Shelf> read(String parts, String modules, Problems problems) {
    Node.Mapping both =
        new Node.Mapping(
            List.of(
                entry("parts", tree("parts.yaml", parts, problems)),
                entry("modules", tree("modules.yaml", modules, problems))),
            Span.startOf("catalogue"));
    return Binding.bind(both, Shelf.class, Reading.plain(problems));
  }

  private static Node tree(String file, String text, Problems problems) {
    return YamlReader.read(file, text, problems)
        .orElseGet(() -> new Node.Mapping(List.of(), Span.startOf(file)));
  }

  private static Node.Entry entry(String key, Node value) {
    return new Node.Entry(new Node.Scalar(key, false, value.at()), value);
  }
}

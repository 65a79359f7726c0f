package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class OverlayTest {

  @Test
  void mappingsMergeAndListsAndScalarsReplace() {
    assertThat(laid("a: {b: 1, c: [1, 2]}\nd: 3", "a: {c: [3], e: 4}\nd: {f: 5}"))
        .isEqualTo("{a={b=1, c=[3], e=4}, d={f=5}}");
  }

  @Test
  void anEmptyValueRemovesItsKey() {
    assertThat(laid("a: {b: 1, c: 2}\nd: 3", "a: {b: ~}\nd:\ne: null")).isEqualTo("{a={c=2}}");
  }

  @Test
  void everyValueKeepsItsOwnPlace() {
    Node.Mapping laid =
        (Node.Mapping) Overlay.lay(node("base.yaml", "a: 1\nb: 2"), node("over.yaml", "\n\na: 9"));
    assertThat(laid.get("a").orElseThrow().at()).hasToString("over.yaml:3:4");
    assertThat(laid.get("b").orElseThrow().at()).hasToString("base.yaml:2:4");
  }

  private static String laid(String base, String over) {
    return text(Overlay.lay(node("base.yaml", base), node("over.yaml", over)));
  }

  private static Node node(String file, String text) {
    return YamlReader.read(file, text, new Problems()).orElseThrow();
  }

  private static String text(Node node) {
    if (node instanceof Node.Mapping mapping) {
      return mapping.entries().stream()
          .map(entry -> entry.key().text() + "=" + text(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof Node.Sequence list) {
      return list.items().stream().map(OverlayTest::text).toList().toString();
    }
    return ((Node.Scalar) node).text();
  }
}

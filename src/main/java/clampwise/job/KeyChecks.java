package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Reports keys that would be passed over in silence: beside another key, or without one. */
final class KeyChecks {

  private final Lost lost;
  private final Problems problems;

  KeyChecks(Lost lost, Problems problems) {
    this.lost = lost;
    this.problems = problems;
  }

  void in(Node.Mapping root) {
    root.mapping("bonding").ifPresent(bonding -> eachItem(bonding, "jumpers", this::jumper));
    eachValue(root, "planes", this::plane);
    eachValue(root, "fields", field -> field.mapping("attach").ifPresent(this::schedule));
    eachValue(root, "fields", field -> ZoneWords.check(field, lost, problems));
    root.mapping("claims").ifPresent(claims -> ZoneWords.claims(claims, problems));
    root.mapping("install").ifPresent(work -> inOrder(work, "begins", "ends"));
    root.mapping("documents").ifPresent(all -> eachValue(all, "sheets", this::sheet));
  }

  private void sheet(Node.Mapping sheet) {
    inOrder(sheet, "on", "valid-until");
  }

  private void inOrder(Node.Mapping mapping, String first, String last) {
    Optional<Day> from = day(mapping, first);
    Optional<Day> to = day(mapping, last);
    if (from.isPresent() && to.isPresent() && from.get().daysUntil(to.get()) < 0) {
      String found = last + " before " + first;
      add(
          mapping.get(last).orElseThrow(),
          Problem.of(to.get().at(), found, "a day that is not before " + from.get().date()));
    }
  }

  private static Optional<Day> day(Node.Mapping mapping, String key) {
    return word(mapping, key).flatMap(text -> Day.of(text, mapping.get(key).orElseThrow().at()));
  }

  private void jumper(Node.Mapping jumper) {
    boolean whole = has(jumper, "field");
    boolean from = has(jumper, "from");
    boolean to = has(jumper, "to");
    if (whole) {
      notBoth(jumper, "field", "from");
      notBoth(jumper, "field", "to");
    } else if (from && to) {
      notWithout(jumper, "row", "field");
      notToItself(jumper);
    } else if (from) {
      notWithout(jumper, "from", "to");
    } else if (to) {
      notWithout(jumper, "to", "from");
    } else if (!isMisspelt(jumper, "from", "to", "field")) {
      add(jumper, Problem.of(jumper.at(), "a jumper without ends", "from and to, or field"));
    }
  }

  private void notToItself(Node.Mapping jumper) {
    Optional<String> from = word(jumper, "from");
    if (from.isPresent() && from.equals(word(jumper, "to"))) {
      Node to = jumper.get("to").orElseThrow();
      add(jumper, Problem.of(to.at(), "a jumper that ends where it starts", "two modules"));
    }
  }

  private void plane(Node.Mapping plane) {
    notBoth(plane, "outline", "size");
    notBoth(plane, "outline", "edges");
    plane.mapping("purlins").ifPresent(purlins -> notBoth(purlins, "at", "first"));
    plane.mapping("purlins").ifPresent(purlins -> notBoth(purlins, "at", "spacing"));
    eachValue(plane, "obstructions", thing -> notBoth(thing, "size", "diameter"));
  }

  private void schedule(Node.Mapping attach) {
    if (!has(attach, "zones")) {
      notWithout(attach, "from", "every");
    }
  }

  private void notBoth(Node.Mapping mapping, String one, String other) {
    if (has(mapping, one) && has(mapping, other)) {
      Node value = mapping.get(other).orElseThrow();
      add(value, Problem.of(value.at(), "both " + one + " and " + other, "one of the two"));
    }
  }

  private void notWithout(Node.Mapping mapping, String key, String needed) {
    if (has(mapping, key) && !has(mapping, needed) && !isMisspelt(mapping, needed)) {
      Node value = mapping.get(key).orElseThrow();
      add(mapping, Problem.of(value.at(), key + " without " + needed, "the key " + needed));
    }
  }

  private void add(Node without, Problem problem) {
    problems.add(problem);
    lost.add(without);
  }

  private static boolean has(Node.Mapping mapping, String key) {
    return mapping.get(key).filter(value -> !value.isEmpty()).isPresent();
  }

  /** Whether some key, which is a problem of its own, most likely means one of these. */
  private static boolean isMisspelt(Node.Mapping mapping, String... keys) {
    return mapping.entries().stream()
        .map(entry -> entry.key().text())
        .anyMatch(
            key -> Nearest.to(key, List.of(keys)).filter(near -> !near.equals(key)).isPresent());
  }

  private static Optional<String> word(Node.Mapping mapping, String key) {
    return mapping
        .get(key)
        .filter(Node.Scalar.class::isInstance)
        .map(value -> ((Node.Scalar) value).text());
  }

  private static void eachValue(Node.Mapping in, String key, Consumer<Node.Mapping> check) {
    mappings(
        in.mapping(key).stream().flatMap(all -> all.entries().stream()).map(entry -> entry.value()),
        check);
  }

  private static void eachItem(Node.Mapping in, String key, Consumer<Node.Mapping> check) {
    List<Node> items =
        in.get(key)
            .filter(Node.Sequence.class::isInstance)
            .map(list -> ((Node.Sequence) list).items())
            .orElse(List.of());
    mappings(items.stream(), check);
  }

  private static void mappings(Stream<Node> nodes, Consumer<Node.Mapping> check) {
    nodes.filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast).forEach(check);
  }
}

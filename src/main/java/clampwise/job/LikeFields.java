package clampwise.job;

import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Resolves {@code like: OTHER} of fields. */
final class LikeFields {

  static final String LIKE = "like";

  private static final Map<String, String> PLACEMENTS =
      Map.of("block", "columns", "columns", "block");

  private final Map<String, Node> written = new LinkedHashMap<>();
  private final Map<String, Node> resolved = new HashMap<>();
  private final Set<String> underWay = new HashSet<>();
  private final Set<Node> reported;
  private final Problems problems;

  private LikeFields(Node.Mapping fields, Set<Node> reported, Problems problems) {
    this.reported = reported;
    this.problems = problems;
    fields.entries().forEach(entry -> written.put(entry.key().text(), entry.value()));
  }

  /** The fields with every {@code like} resolved; what cannot be is put among the reported. */
  static Node.Mapping resolve(Node.Mapping fields, Set<Node> reported, Problems problems) {
    LikeFields likes = new LikeFields(fields, reported, problems);
    List<Node.Entry> entries = new ArrayList<>();
    for (Node.Entry entry : fields.entries()) {
      entries.add(new Node.Entry(entry.key(), likes.resolved(entry.key().text())));
    }
    return new Node.Mapping(entries, fields.at());
  }

  private Node resolved(String name) {
    Node known = resolved.get(name);
    if (known != null) {
      return known;
    }
    Node field = written.getOrDefault(name, Node.Scalar.NOTHING);
    Optional<Node> like =
        field instanceof Node.Mapping mapping ? mapping.get(LIKE) : Optional.empty();
    Node result = like.map(other -> laid(name, (Node.Mapping) field, other)).orElse(field);
    resolved.put(name, result);
    return result;
  }

  private Node laid(String name, Node.Mapping field, Node like) {
    Optional<Problem> problem = problemOf(like);
    if (problem.isPresent()) {
      problems.add(problem.get());
      return dropped(field);
    }
    String other = ((Node.Scalar) like).text();
    underWay.add(name);
    boolean circle = underWay.contains(other);
    Node base = circle ? field : resolved(other);
    underWay.remove(name);
    if (circle) {
      problems.add(Problem.of(like.at(), "fields that are like each other", "an end of the chain"));
    }
    return circle || reported.contains(base) || !(base instanceof Node.Mapping)
        ? dropped(field)
        : over((Node.Mapping) base, field.without(LIKE));
  }

  /** Every key that the field does not write itself; a block and columns replace each other. */
  private static Node.Mapping over(Node.Mapping base, Node.Mapping field) {
    Node.Mapping result = base;
    for (Node.Entry entry : field.entries()) {
      String key = entry.key().text();
      result =
          entry.value().isEmpty()
              ? result.without(key)
              : result.without(PLACEMENTS.getOrDefault(key, key)).with(key, entry.value());
    }
    return new Node.Mapping(result.entries(), field.at());
  }

  private Node dropped(Node field) {
    reported.add(field);
    return field;
  }

  private Optional<Problem> problemOf(Node like) {
    if (!(like instanceof Node.Scalar other) || other.isEmpty()) {
      return Optional.of(Problem.of(like.at(), Reading.found(like), "the name of a field"));
    }
    if (written.containsKey(other.text())) {
      return Optional.empty();
    }
    Optional<String> nearest = Nearest.to(other.text(), written.keySet());
    String found = "no field named " + Reading.quoted(other.text());
    return Optional.of(new Problem(like.at(), found, "the name of a field", nearest));
  }
}

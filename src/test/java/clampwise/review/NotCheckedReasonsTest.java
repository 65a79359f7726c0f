package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Missing;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.job.Shape;
import clampwise.source.Node;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each key of a job is left out in turn: what is then not checked says which key to write, and
 * where.
 */
class NotCheckedReasonsTest {

  private static final Catalogue CATALOGUE = CatalogueReader.read();
  private static final Limits LIMITS = LimitsReader.read();
  private static final Set<String> KEYS = keys(Job.class, new HashSet<>(), new HashSet<>());
  private static final Pattern KEY = Pattern.compile("\\((?:[^()]+: )?([a-z-]+)\\)");

  /** What no key of a job would clear: a method that does not apply, or what a problem tells. */
  private static final List<String> NO_KEY =
      List.of(
          "could not be read",
          "is held by no clamp",
          "is the only clamp on a module edge",
          "no attachment holds column",
          "is not known",
          "is not made for",
          "may not be held against",
          "lies in no wind zone",
          "could be laid out",
          "could be read and laid out",
          "which is no module of the layout",
          "no module of the layout is known",
          "(none named)",
          "the slope between panel and roof",
          "string ");

  /** Jobs that together hold nearly every section. */
  static Stream<Path> jobs() {
    return Stream.of(
        Path.of("rules/base/ready-roof.yaml"),
        Path.of("rules/base/hall-roof.yaml"),
        Path.of("rules/base/weathered-roof.yaml"),
        Path.of("rules/base/wired-roof.yaml"),
        Path.of("examples/store-package/job.yaml"));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void whatIsNotCheckedNamesTheKeyToWriteAndPointsAtWhereItBelongs(Path file) throws IOException {
    Problems problems = new Problems();
    Node root = YamlReader.read("job", Files.readString(file), problems).orElseThrow();
    check((Node.Mapping) root);
    withoutOneKey(root).forEach(job -> check((Node.Mapping) job));
  }

  private static void check(Node.Mapping root) {
    Problems problems = new Problems();
    Optional<Job> job = JobReader.read("job", root, problems).filter(read -> problems.isEmpty());
    if (job.isPresent()) {
      for (Missing one : Derivation.of(job.get(), CATALOGUE, LIMITS, problems).missing()) {
        checkKey(one);
        checkPlace(one, root, job.get());
      }
    }
  }

  private static void checkKey(Missing one) {
    Matcher key = KEY.matcher(one.reason());
    boolean named = key.find() && KEYS.contains(key.group(1));
    boolean none = NO_KEY.stream().anyMatch(one.reason()::contains);
    assertThat(named || none).as("%s names a key", one).isTrue();
  }

  /** Only what belongs under a section that is not there is told at the name of the job. */
  private static void checkPlace(Missing one, Node.Mapping root, Job job) {
    if (one.at().equals(job.job().at())) {
      String section = one.subject().path().split("[. ]")[0];
      boolean inIt = root.get(section).isPresent() && one.reason().contains("(" + section + ":");
      assertThat(inIt).as("%s points at its section", one).isFalse();
    }
  }

  private static List<Node> withoutOneKey(Node node) {
    List<Node> all = new ArrayList<>();
    if (node instanceof Node.Mapping mapping) {
      for (Node.Entry entry : mapping.entries()) {
        String key = entry.key().text();
        all.add(mapping.without(key));
        withoutOneKey(entry.value()).forEach(value -> all.add(mapping.with(key, value)));
      }
    } else if (node instanceof Node.Sequence list && !list.items().isEmpty()) {
      withoutOneKey(list.items().get(0)).forEach(item -> all.add(withFirst(list, item)));
    }
    return all;
  }

  private static Node withFirst(Node.Sequence list, Node item) {
    List<Node> items = new ArrayList<>(list.items());
    items.set(0, item);
    return new Node.Sequence(items, list.at());
  }

  private static Set<String> keys(Type type, Set<String> keys, Set<Type> seen) {
    if (seen.add(type) && type instanceof ParameterizedType generic) {
      keys(generic.getActualTypeArguments()[0], keys, seen);
    } else if (type instanceof Class<?> plain && plain.isRecord()) {
      for (Shape.Slot slot : Shape.of(plain).slots()) {
        keys.add(slot.key());
        if (!seen.contains(slot.value())) {
          keys(slot.value(), keys, seen);
        }
      }
    }
    return keys;
  }
}

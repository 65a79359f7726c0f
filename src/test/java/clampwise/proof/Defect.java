package clampwise.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * One way to spoil a job that a rule has to find, as it stands in {@code defects/}.
 *
 * @param rule id of the rule
 * @param number which of the rule's defects it is
 * @param asked its keys: {@code when}, {@code kinds}, {@code any}, {@code last}, {@code points},
 *     {@code swap}, {@code set}, {@code touches}, {@code at}, {@code about}, {@code also}, {@code
 *     alone}
 */
record Defect(String rule, int number, Map<String, Object> asked) {

  /** Plants the defect at a random place; empty if the job has none for it, or it was touched. */
  Optional<Planted> plant(Draft draft, Random random, Touched touched) {
    Words words = Scene.of(draft, random, asked.containsKey("last"));
    words.put("any", pick(texts("any", words), random));
    if (!texts("when", words).stream().allMatch(path -> holds(draft, path))) {
      return Optional.empty();
    }
    Edits edits = new Edits(draft, words);
    edits.points(asked.containsKey("points"));
    if (!edits.swap(part("swap"))) {
      return Optional.empty();
    }
    edits.set(part("set"));
    List<String> at = texts("at", words);
    List<String> points = at.isEmpty() ? List.of(edits.last()) : Block.written(draft, at);
    List<String> changes = new ArrayList<>(edits.changes());
    changes.addAll(texts("touches", words));
    List<String> pointed = new ArrayList<>(points);
    pointed.addAll(at);
    return touched.add(changes, pointed)
        ? Optional.of(
            new Planted(this, points, texts("about", words), new TreeSet<>(texts("also", words))))
        : Optional.empty();
  }

  boolean isFor(JobKind kind) {
    return texts("kinds", new Words()).stream().allMatch(kinds -> kind.name().matches(kinds));
  }

  private static boolean holds(Draft draft, String condition) {
    if (condition.startsWith("not ")) {
      return !holds(draft, condition.substring(4));
    }
    int is = condition.indexOf(" is ");
    return is < 0
        ? draft.has(condition)
        : draft
            .get(condition.substring(0, is))
            .filter(condition.substring(is + 4)::equals)
            .isPresent();
  }

  private Map<String, Object> part(String key) {
    return asked.containsKey(key) ? Draft.mapping(asked.get(key)) : Map.of();
  }

  private List<String> texts(String key, Words words) {
    Object value = asked.getOrDefault(key, List.of());
    List<String> texts = new ArrayList<>();
    for (Object each : value instanceof List ? Draft.list(value) : List.of(value)) {
      texts.add(words.fill((String) each));
    }
    return texts;
  }

  private static String pick(List<String> choices, Random random) {
    return choices.isEmpty() ? "" : choices.get(random.nextInt(choices.size()));
  }

  /** The places it may not share with another defect: what it touches, and the words it names. */
  Set<String> alone() {
    return new LinkedHashSet<>(texts("alone", new Words()));
  }

  /** Whether a sentence about a missed defect is about this one. */
  boolean isNamed(String missed) {
    return missed.startsWith(this + " ");
  }

  @Override
  public String toString() {
    return number == 0 ? rule : rule + " (" + (number + 1) + ")";
  }
}

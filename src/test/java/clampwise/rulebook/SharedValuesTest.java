package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.rulebook.example.PageExample;
import clampwise.rulebook.example.PageText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A value that fields take from one another is one mistake, if it is one. */
class SharedValuesTest {

  /** On the planes of the base jobs a second field fits beside the first. */
  private static final String SECOND =
      "\nfields:\n  Z: {like: A, block: {at: [60 ft, 8 ft], rows: 3, columns: 4}}\n";

  /**
   * Each field needs a lug of its own; a written point lies elsewhere in each field; a second field
   * on a small roof stands nearer to its ridge, in the way, or where no section was; its clamps are
   * missing in the torque log too; a list of parts is for all fields.
   */
  private static final Set<String> EACH_ITS_OWN =
      Set.of(
          "field-without-lug",
          "attachment-holds-no-module",
          "attachments-collide",
          "hatch-without-path",
          "no-clear-path-across",
          "obstruction-in-pathway",
          "parts-list-too-long",
          "parts-list-without-spares",
          "ridge-setback-too-small",
          "smoke-path-too-narrow",
          "smoke-vent-hemmed-in",
          "too-few-free-sides",
          "torque-log-incomplete");

  @Test
  void aFieldLikeTheFirstNeitherAddsNorHidesAFindingAtTheSameValue() {
    Rulebook rulebook = Rulebook.builtIn();
    List<String> twice = new ArrayList<>();
    for (RulePage page : RulePages.all()) {
      for (PageExample example : PageText.of(page).examples()) {
        if (example.isOf("Fires:") && !EACH_ITS_OWN.contains(page.id())) {
          twice.addAll(twice(page.id(), example, rulebook));
        }
      }
    }
    assertThat(twice).isEmpty();
  }

  private static List<String> twice(String rule, PageExample example, Rulebook rulebook) {
    Map<String, Long> once = places(rule, rulebook.judge(ExampleJobs.facts(example)));
    assertThat(once).as(rule + ", " + example.title()).isNotEmpty();
    Map<String, Long> both = places(rule, rulebook.judge(ExampleJobs.facts(example, SECOND)));
    return once.entrySet().stream()
        .filter(place -> !place.getValue().equals(both.get(place.getKey())))
        .map(place -> rule + ", " + example.title() + ": " + place.getKey())
        .toList();
  }

  private static Map<String, Long> places(String rule, Judgement judgement) {
    return judgement.findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(Finding::at)
        .collect(Collectors.groupingBy(Object::toString, TreeMap::new, Collectors.counting()));
  }
}

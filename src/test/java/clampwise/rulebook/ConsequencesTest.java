package clampwise.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.Place;
import clampwise.finding.Severity;
import clampwise.finding.Subject;
import clampwise.source.Position;
import clampwise.source.Span;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What only follows from another finding, and what does not. */
class ConsequencesTest {

  private static final String OFF_SEAM = "attachment-off-seam";
  private static final String OVERLOADED = "attachment-overloaded";
  private static final String NEAR = "attachment-near-its-strength";
  private static final String POINT_2 = "fields.B / attachment B point 2";

  private final List<RuleCard> cards = Rulebook.builtIn().cards();

  @Test
  void anOverloadedClampFollowsFromStandingBesideItsSeam() {
    Finding off = finding(OFF_SEAM, Severity.ERROR, 10, POINT_2, "fields.B / attachment B point 4");
    Finding over = finding(OVERLOADED, Severity.ERROR, 20, POINT_2);

    assertThat(leaders(off, over)).containsExactly(Optional.empty(), Optional.of(off.name()));
  }

  @Test
  void anotherClampOfTheFieldIsAnotherMistake() {
    Finding off = finding(OFF_SEAM, Severity.ERROR, 10, POINT_2);
    Finding over =
        finding(OVERLOADED, Severity.ERROR, 20, POINT_2, "fields.B / attachment B point 3");

    assertThat(leaders(off, over)).containsOnly(Optional.empty());
  }

  @Test
  void whatGoesBackToTheSameWrittenValueFollows() {
    Finding over = finding(OVERLOADED, Severity.ERROR, 20, POINT_2);
    Finding near = finding(NEAR, Severity.NOTE, 20, "fields.B / attachment B point 3");

    assertThat(leaders(over, near)).containsExactly(Optional.empty(), Optional.of(over.name()));
  }

  @Test
  void nothingFollowsFromAFindingThatWeighsLess() {
    Finding off = finding(OFF_SEAM, Severity.NOTE, 10, POINT_2);
    Finding over = finding(OVERLOADED, Severity.ERROR, 10, POINT_2);

    assertThat(leaders(over, off)).containsOnly(Optional.empty());
  }

  @Test
  void rulesThatNameNoOtherStandAlone() {
    Finding frame = finding("frame-outside-mid-clamp-range", Severity.ERROR, 10, POINT_2);

    assertThat(leaders(finding(OFF_SEAM, Severity.ERROR, 10, POINT_2), frame))
        .containsOnly(Optional.empty());
  }

  @Test
  void aChainIsToldFromItsFirst() {
    Finding off = finding(OFF_SEAM, Severity.ERROR, 10, POINT_2);
    Finding over = finding(OVERLOADED, Severity.ERROR, 20, POINT_2);
    Finding near = finding(NEAR, Severity.NOTE, 20, "fields.B / attachment B point 3");

    assertThat(leaders(off, over, near))
        .containsExactly(Optional.empty(), Optional.of(off.name()), Optional.of(off.name()));
  }

  @Test
  void aWholeFieldHoldsItsModules() {
    Finding clamp = finding("clamp-not-made-for-profile", Severity.ERROR, 10, "fields.B / SC-C");
    Finding over = finding(OVERLOADED, Severity.ERROR, 20, POINT_2);
    Finding other = finding(OVERLOADED, Severity.ERROR, 30, "fields.C / attachment L1 seam 2");

    assertThat(leaders(clamp, over, other))
        .containsExactly(Optional.empty(), Optional.of(clamp.name()), Optional.empty());
  }

  @Test
  void rulesNameOnlyRulesAndNeverEachOtherInARing() {
    Set<String> ids = new HashSet<>();
    cards.forEach(card -> ids.add(card.id()));
    for (RuleCard card : cards) {
      assertThat(ids).as(card.id()).containsAll(card.follows());
      assertThat(before(card.id(), new HashSet<>())).as(card.id()).doesNotContain(card.id());
    }
  }

  private Set<String> before(String rule, Set<String> seen) {
    for (RuleCard card : cards) {
      if (card.id().equals(rule)) {
        card.follows().stream().filter(seen::add).toList().forEach(each -> before(each, seen));
      }
    }
    return seen;
  }

  private List<Optional<FindingName>> leaders(Finding... findings) {
    return Consequences.told(cards, List.of(findings)).stream().map(Finding::follows).toList();
  }

  private static Finding finding(String rule, Severity severity, int line, String... places) {
    Span at = new Span("job.yaml", new Position(line, 1), new Position(line, 5));
    return new Finding(
        rule,
        severity,
        "title",
        "message",
        "reason",
        "remedy",
        List.of(),
        Subject.of("cause at line " + line),
        at,
        Optional.empty(),
        Arrays.stream(places).map(path -> place(path, at)).toList(),
        Optional.empty(),
        Optional.empty());
  }

  private static Place place(String path, Span at) {
    return new Place(new Subject(path), at, Optional.empty());
  }
}

package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Basis;
import org.junit.jupiter.api.Test;

class CitationsTest {

  private final Citations citations = Citations.packed();

  @Test
  void aClauseFollowsItsDocumentWithHowTheNumberWasObtainedAndWhereItHolds() {
    Basis basis = new Basis("asce-7-16", "", "29.4.4", "second-hand", "gaps between modules");

    assertThat(citations.text(basis))
        .isEqualTo("ASCE/SEI 7-16, 29.4.4 (second-hand); holds for gaps between modules");
    assertThat(citations.detail(basis))
        .isEqualTo("29.4.4 (second-hand); holds for gaps between modules");
  }

  @Test
  void severalEditionsStandInThePlaceOfTheOneInTheDocumentsNumber() {
    Basis basis = new Basis("asce-7-16", "7-16 and 7-22", "29.4.4", "", "");

    assertThat(citations.text(basis)).isEqualTo("ASCE/SEI 7-16 and 7-22, 29.4.4");
  }

  @Test
  void practiceIsSaidOnce() {
    Basis basis = new Basis("practice", "", "", "common practice, no source", "seams");

    assertThat(citations.text(basis)).isEqualTo("Common practice, no source; holds for seams");
    assertThat(citations.detail(basis)).isEqualTo("holds for seams");
  }

  @Test
  void aRulesOwnDocumentIsNotRepeatedBesideTheClauseOfItsLimit() {
    Basis limit = new Basis("asce-7-16", "7-16 and 7-22", "29.4.4", "read", "low modules");

    assertThat(limit.covers(Basis.of("asce-7-16", "29.4.4"))).isTrue();
    assertThat(limit.covers(Basis.of("asce-7-16", ""))).isTrue();
    assertThat(limit.covers(Basis.of("asce-7-16", "30.3"))).isFalse();
    assertThat(limit.covers(Basis.of("practice", ""))).isFalse();
  }
}

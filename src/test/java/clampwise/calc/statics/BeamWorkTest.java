package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class BeamWorkTest {

  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 9})
  void everyLineIsWhatItsFormulaGives(int supports) {
    for (int seed = 0; seed < 20; seed++) {
      RandomBeam random = new RandomBeam(supports, seed);
      Work work = new Work(Measure.METRIC);
      assertThat(BeamWork.show(random.beam(), random.loads(), "", work).result()).isPresent();
      Recomputed.check(work);
    }
  }

  @ParameterizedTest
  @EnumSource
  void formulasHoldInBothSetsOfUnits(Measure measure) {
    Work work = new Work(measure);
    Beam beam = new Beam(-0.2, 3.3, new double[] {0, 1, 2.4, 3});
    BeamWork.show(beam, List.of(new BeamLoad.Even(-0.2, 3.3, 500)), "", work);
    Recomputed.check(work);
  }

  @ParameterizedTest
  @EnumSource
  void aSupportThatHasToPullIsNamed(Measure measure) {
    Work work = new Work(measure);
    Beam beam = new Beam(0, 1, new double[] {0.1, 0.4});
    List<Term> reactions =
        BeamWork.show(beam, List.of(new BeamLoad.Even(0, 1, 500)), "", work).result().orElseThrow();
    assertThat(reactions.get(0).si()).isNegative();
    assertThat(work.lines()).extracting(Line::note).contains("The support has to pull: prying.");
  }

  /** Three supports under one even load: its size, held moments, moments, reactions, spans. */
  @Test
  void everyNumberOfTheBeamHasItsLine() {
    Work work = new Work(Measure.METRIC);
    Beam beam = new Beam(-0.2, 2.3, new double[] {0, 1, 2});
    BeamWork.show(beam, List.of(new BeamLoad.Even(-0.2, 2.3, 500)), "", work);
    assertThat(work.lines())
        .extracting(line -> line.result().symbol())
        .containsExactly(
            "w", "F_1", "F_2", "M_1", "M_2", "M_3", "R_1", "R_2", "R_3", "M_1_2", "M_2_3");
    assertThat(work.lines().stream().flatMap(line -> line.inputs().stream()))
        .filteredOn(term -> term.symbol().startsWith("L_"))
        .extracting(term -> term.symbol() + " " + term.meaning())
        .containsOnly("L_0 overhang", "L_1 span 1", "L_2 span 2", "L_3 overhang");
    assertThat(work.lines()).extracting(Line::note).containsOnly("");
  }
}

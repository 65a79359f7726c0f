package clampwise.calc.statics;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Recomputed;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
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
}

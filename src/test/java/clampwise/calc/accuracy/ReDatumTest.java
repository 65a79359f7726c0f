package clampwise.calc.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Marks are as few as they can be: held against every choice of marks. */
class ReDatumTest {

  private static final ToleranceStack STACK = new ToleranceStack(0.002);

  @Test
  void twentyModulesWith8MillimetresOfSlackAreMarkedEveryFour() {
    ReDatum run = new ReDatum(Collections.nCopies(20, 0.008), STACK::worstM);

    assertThat(run.marks()).contains(List.of(5, 9, 13, 17));
    assertThat(run.firstOut(20)).contains(5);
    assertThat(run.firstOut(4)).isEmpty();
    assertThat(run.firstOut(5)).contains(5);
  }

  @Test
  void aModuleThatNoMarkCanKeepHasNone() {
    ReDatum run = new ReDatum(List.of(0.01, 0.001), STACK::worstM);

    assertThat(run.marks()).isEmpty();
  }

  @Test
  void noOtherChoiceOfMarksIsSmaller() {
    Random dice = new Random(37);
    for (int run = 0; run < 300; run++) {
      List<Double> slackM = new ArrayList<>();
      for (int i = 0; i < 9; i++) {
        slackM.add(dice.nextInt(12) * 0.001);
      }
      ReDatum reDatum = new ReDatum(slackM, STACK::worstM);
      Optional<Integer> fewest = fewest(slackM);
      assertThat(reDatum.marks().map(List::size)).as(slackM.toString()).isEqualTo(fewest);
      reDatum.marks().ifPresent(marks -> assertThat(holds(slackM, bits(marks))).isTrue());
    }
  }

  /** The fewest marks of all 2^9 choices that hold. */
  private static Optional<Integer> fewest(List<Double> slackM) {
    Optional<Integer> fewest = Optional.empty();
    for (int choice = 0; choice < 1 << slackM.size(); choice++) {
      int marks = Integer.bitCount(choice);
      if (holds(slackM, choice) && marks < fewest.orElse(Integer.MAX_VALUE)) {
        fewest = Optional.of(marks);
      }
    }
    return fewest;
  }

  private static boolean holds(List<Double> slackM, int choice) {
    int since = 0;
    for (int i = 0; i < slackM.size(); i++) {
      since = (choice >> i & 1) == 1 ? 1 : since + 1;
      if (since * 0.002 > slackM.get(i) + 1e-12) {
        return false;
      }
    }
    return true;
  }

  private static int bits(List<Integer> marks) {
    return marks.stream().mapToInt(mark -> 1 << mark - 1).sum();
  }
}

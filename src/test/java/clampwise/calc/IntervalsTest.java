package clampwise.calc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class IntervalsTest {

  private final Random random = new Random(3);

  @Test
  void touchingIntervalsBecomeOne() {
    assertThat(Intervals.of(0, 1).union(Intervals.of(1, 2))).isEqualTo(Intervals.of(0, 2));
  }

  @Test
  void theIntersectionOfTouchingIntervalsIsTheirPoint() {
    assertThat(Intervals.of(0, 1).intersection(Intervals.of(1, 2))).isEqualTo(Intervals.of(1, 1));
  }

  @Test
  void theWidestOfEqualIntervalsIsTheLowest() {
    Intervals two = Intervals.of(2, 3).union(Intervals.of(0, 1));
    assertThat(two.widest()).contains(new Interval(0, 1));
  }

  @Test
  void membershipFollowsTheLawsOfSets() {
    for (int round = 0; round < 300; round++) {
      Intervals a = some();
      Intervals b = some();
      double x = random.nextDouble() * 10;
      assertThat(a.union(b).contains(x)).isEqualTo(a.contains(x) || b.contains(x));
      assertThat(a.intersection(b).contains(x)).isEqualTo(a.contains(x) && b.contains(x));
    }
  }

  @Test
  void unionAndIntersectionTogetherAreAsLongAsBothSets() {
    for (int round = 0; round < 300; round++) {
      Intervals a = some();
      Intervals b = some();
      assertThat(totalM(a.union(b)) + totalM(a.intersection(b)))
          .isCloseTo(totalM(a) + totalM(b), within(1e-9));
    }
  }

  private static double totalM(Intervals set) {
    return set.parts().stream().mapToDouble(Interval::lengthM).sum();
  }

  private Intervals some() {
    List<Interval> parts = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      double from = random.nextDouble() * 9;
      parts.add(new Interval(from, from + random.nextDouble()));
    }
    return new Intervals(parts);
  }
}

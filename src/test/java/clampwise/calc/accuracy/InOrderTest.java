package clampwise.calc.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The longest rising part, held against every part of short sequences. */
class InOrderTest {

  @Test
  void whatWasPulledForwardIsLeftOut() {
    assertThat(InOrder.rising(new int[] {0, 4, 1, 2, 3}))
        .containsExactly(true, false, true, true, true);
    assertThat(InOrder.rising(new int[] {})).isEmpty();
  }

  @Test
  void noRisingPartIsLonger() {
    Random dice = new Random(11);
    for (int run = 0; run < 300; run++) {
      int[] places = dice.ints(0, 1000).distinct().limit(dice.nextInt(9)).toArray();
      boolean[] rising = InOrder.rising(places);
      int[] kept =
          IntStream.range(0, places.length).filter(i -> rising[i]).map(i -> places[i]).toArray();
      assertThat(kept).isSorted();
      assertThat(kept.length).isEqualTo(longest(places));
    }
  }

  private static int longest(int[] places) {
    int longest = 0;
    for (int choice = 0; choice < 1 << places.length; choice++) {
      int chosen = choice;
      int[] part =
          IntStream.range(0, places.length)
              .filter(i -> (chosen >> i & 1) == 1)
              .map(i -> places[i])
              .toArray();
      boolean sorted = IntStream.range(1, part.length).allMatch(i -> part[i - 1] < part[i]);
      longest = sorted ? Math.max(longest, part.length) : longest;
    }
    return longest;
  }
}

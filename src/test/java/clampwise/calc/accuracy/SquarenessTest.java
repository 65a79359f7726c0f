package clampwise.calc.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Three, four, five; and corners drawn with a known angle. */
class SquarenessTest {

  @Test
  void threeFourFiveIsSquareAndSoAreItsMultiples() {
    for (int step = 1; step <= 5; step++) {
      Squareness corner = new Squareness(3 * step, 4 * step);
      assertThat(corner.diagonalM()).isEqualTo(5 * step);
      assertThat(corner.offSquare(5 * step)).isZero();
    }
  }

  @Test
  void theDeviationIsTheSineOfTheAngleBeyondARightOne() {
    Random dice = new Random(345);
    for (int run = 0; run < 1000; run++) {
      double along = 1 + dice.nextDouble() * 30;
      double up = 1 + dice.nextDouble() * 10;
      double beyond = (dice.nextDouble() - 0.5) * 0.1;
      // The corner at the origin, one side along the axis, the other tilted: no law of cosines.
      double x = along + up * Math.sin(beyond);
      double measured = Math.hypot(x, up * Math.cos(beyond));
      assertThat(new Squareness(along, up).offSquare(measured))
          .isCloseTo(Math.sin(beyond), within(1e-9));
    }
  }
}

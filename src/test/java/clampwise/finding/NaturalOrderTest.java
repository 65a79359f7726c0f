package clampwise.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

  private static final List<String> ORDERED =
      List.of(
          "",
          "A",
          "A.R1C1",
          "A.R1C2",
          "A.R1C10",
          "A.R1C10 / lower edge",
          "A.R2C1",
          "A.R10C1",
          "A.R99999999999999999999C1",
          "B",
          "a");

  @Test
  void numbersInNamesCountAsNumbers() {
    List<String> names = new ArrayList<>(ORDERED);
    Collections.shuffle(names, new Random(3));
    names.sort(NaturalOrder::compare);
    assertThat(names).isEqualTo(ORDERED);
  }

  @Test
  void onlyEqualNamesAreEqual() {
    assertThat(NaturalOrder.compare("R1", "R01")).isNotZero();
    assertThat(NaturalOrder.compare("R01", "R1")).isNotZero();
    assertThat(NaturalOrder.compare("R01C2", "R1C3")).isNegative();
    assertThat(NaturalOrder.compare("R1", "R1")).isZero();
  }

  @Test
  void subjectsStandInThatOrder() {
    assertThat(Subject.of("fields.A", "module R1C2"))
        .isLessThan(Subject.of("fields.A", "module R1C10"));
  }
}

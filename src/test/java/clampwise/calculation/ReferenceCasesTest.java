package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each reference case comes out of its command within the digits printed there. */
class ReferenceCasesTest {

  static List<ReferenceCase> cases() {
    return ReferenceCase.all();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theCommandGivesThePrintedValue(ReferenceCase reference) {
    assertThat(reference.recomputed())
        .as(reference.toString())
        .isCloseTo(reference.number(), within(reference.tolerance()));
  }
}

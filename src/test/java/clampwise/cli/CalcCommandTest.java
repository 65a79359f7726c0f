package clampwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calculation.Calculation;
import clampwise.calculation.Calculations;
import clampwise.calculation.Input;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalcCommandTest {

  private static final String[] STEEL = {
    "expansion", "metal=steel", "length=40ft", "coldest=0F", "hottest=160F"
  };

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private int calc(String... words) {
    Console console = new Console(InputStream.nullInputStream(), out, err, Map.of(), Screen.NONE);
    String[] all = Stream.concat(Stream.of("calc"), Stream.of(words)).toArray(String[]::new);
    return new Clampwise(
            console,
            options -> {
              throw new AssertionError("no review was asked for");
            },
            List::of)
        .run(all);
  }

  private int steel(String... more) {
    return calc(Stream.concat(Stream.of(STEEL), Stream.of(more)).toArray(String[]::new));
  }

  private String printed() {
    return out.toString(StandardCharsets.UTF_8);
  }

  private String complaint() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void withoutAnyWordAllCalculationsAreListed() {
    assertThat(calc()).isZero();
    assertThat(printed())
        .contains(Calculations.all().stream().map(Calculation::name).toList())
        .contains(Calculations.find("tributary").orElseThrow().title());
  }

  @Test
  void aNameAloneSaysWhatTheCalculationAsksFor() {
    assertThat(calc("expansion")).isZero();
    assertThat(printed())
        .contains(
            Calculations.find("expansion").orElseThrow().inputs().stream()
                .map(Input::name)
                .toList())
        .contains("one of steel, aluminium", "such as 22 ft", "may be", "-90 °C to 150 °C");
  }

  @Test
  void theWorkHasFormulaValuesResultAndSource() {
    assertThat(steel()).isZero();
    assertThat(printed())
        .contains("dL = alpha/10^6*L*(T_2 - T_1)")
        .contains("alpha = 6.7, L = 40 ft, T_2 = 160 °F, T_1 = 0 °F")
        .contains("= 0.04288 ft (0.5146 in)")
        .contains("table 2.3 (read)")
        .contains("not an engineer's approval");
  }

  @Test
  void everyListingAndPageFitsEightyColumns() {
    calc();
    Calculations.all().forEach(calculation -> calc(calculation.name()));
    steel("travel=1in");
    calc(
        "seam-to-clips",
        "clips=0m,1m,2m,3m",
        "attachments=0.5m,1.7m",
        "forces=900N",
        "pressure=1kPa",
        "pitch=16in");
    assertThat(printed().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void theWorkIsPrintedInTheUnitsOfTheInputsUnlessSaidOtherwise() {
    steel("--units", "metric");
    assertThat(printed()).contains("L = 12.192 m", "= 0.0130698 m (13.07 mm)");
  }

  @Test
  void whatStandsForAnInputLeftOutIsSaid() {
    calc("jumper-slack", "movement=9.6mm");
    assertThat(printed()).contains("factor = 2 (not given)");
  }

  @Test
  void everythingWrongIsSaidAtOnce() {
    assertThat(calc("expansion", "metl=steel", "length=40", "coldest=-300C", "hot"))
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(printed()).isEmpty();
    assertThat(complaint())
        .contains("there is no input metl; the nearest is metal")
        .contains("metal is missing: metal; expected one of steel, aluminium")
        .contains("length is \"40\" without a unit; expected a length such as 22 ft")
        .contains("coldest is \"-300C\", which is out of range", "from -90 °C to 150 °C")
        .contains("\"hot\" is no input; write key=value")
        .contains("hottest is missing")
        .contains("see clampwise calc expansion");
  }

  @ParameterizedTest
  @CsvSource({
    "length=3 pfs, length is \"3 pfs\"; expected a length",
    "metal=steal, the nearest is steel",
    "hottest=160, hottest is \"160\" without a unit; expected a temperature",
    "travel=-1 in, out of range; expected a length"
  })
  void aWrongValueIsNamedWithWhatIsExpected(String word, String message) {
    String key = word.substring(0, word.indexOf('=') + 1);
    Stream<String> others = Stream.of(STEEL).filter(other -> !other.startsWith(key));
    assertThat(calc(Stream.concat(others, Stream.of(word)).toArray(String[]::new)))
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains(message);
  }

  @Test
  void anInputGivenTwiceIsRefused() {
    assertThat(steel("length=41ft")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("length is given twice");
  }

  @Test
  void anUnknownCalculationIsNamedWithTheNearest() {
    assertThat(calc("expantion")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint())
        .contains("there is no calculation expantion; the nearest is expansion")
        .contains("clampwise calc lists all");
  }

  @Test
  void outsideItsValidityACalculationIsRefusedWithTheReason() {
    assertThat(calc("standoff-gap", "insulated=90C", "open=75C")).isEqualTo(ExitCode.UNUSABLE);
    assertThat(printed()).isEmpty();
    assertThat(complaint()).contains("standoff-gap gives no result here: no gap suffices");
  }

  @Test
  void serviceLoadsAreNeverHeldAgainstFactoredStrengths() {
    assertThat(
            calc(
                "attachment-utilisation",
                "up=1kN",
                "demand-is=lrfd",
                "tested-up=2kN",
                "loads-are=allowable"))
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(complaint()).contains("an allowable load (ASD)", "factored loads (LRFD)");
  }

  @Test
  void jsonHoldsEveryLineWithItsValueInSi() throws JsonProcessingException {
    assertThat(steel("--format", "json")).isZero();
    JsonNode document = new ObjectMapper().readTree(printed());
    assertThat(document.path("format").asText()).isEqualTo("clampwise-calculation/1");
    JsonNode line = document.path("lines").path(1);
    assertThat(line.path("symbol").asText()).isEqualTo("dL");
    assertThat(line.path("unit").asText()).isEqualTo("ft");
    assertThat(line.path("si").asDouble())
        .isCloseTo(40 * 0.3048 * 12.06e-6 * 160 / 1.8, within(1e-12));
    assertThat(line.path("inputs")).hasSize(4);
    assertThat(line.path("source").path("document").asText()).isEqualTo("Statics");
    assertThat(document.path("results").path(0).path("symbol").asText()).isEqualTo("dL");
    assertThat(printed().chars()).allMatch(c -> c < 128);
  }
}

package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked cases of snow, combinations and Eurocode, keyed in as on the command line. */
class LoadCasesTest {

  /** Snow cases A-N1 to A-N10 and example 3.8, psf, feet and pcf; tags beside the tests of calc. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          snow-flat-roof edition=asce-7-16 ground-snow=30psf risk-category=II exposure-factor=1 thermal-factor=1 | p_f | 21 | 0.01
          snow-flat-roof edition=asce-7-16 ground-snow=20psf risk-category=II exposure-factor=0.9 thermal-factor=1.2 | p_f | 15.12 | 0.005
          snow-flat-roof edition=asce-7-16 ground-snow=25psf risk-category=III exposure-factor=0.9 thermal-factor=1.1 | p_f | 19.0575 | 0.0001
          snow-exposure-factor edition=asce-7-16 terrain=C roof-exposure=fully | C_e | 0.9 | 0.0001
          snow-thermal-factor edition=asce-7-22 ground-snow=35psf condition=heated resistance=25 | C_t | 1.0825 | 0.00001
          snow-thermal-factor edition=asce-7-16 ground-snow=35psf condition=unheated | C_t | 1.2 | 0.00001
          snow-density edition=asce-7-16 ground-snow=42.9psf risk-category=II | gamma | 19.577 | 0.0005
          snow-minimum edition=asce-7-16 ground-snow=30psf risk-category=II slope=5deg | p_m | 20 | 0.0001
          snow-minimum edition=asce-7-22 ground-snow=30psf risk-category=II slope=5deg | p_m | 30 | 0.0001
          snow-rain edition=asce-7-22 ground-snow=30psf risk-category=II slope=0.5deg eave-to-ridge=50ft | p_r | 8 | 0.0001
          snow-slope-factor edition=asce-7-16 slope=4:12 thermal-factor=1 slippery=yes obstructed=no resistance=30 | C_s | 0.7933 | 0.0001
          snow-slope-factor edition=asce-7-22 slope=8:12 thermal-factor=1.2 slippery=yes obstructed=no | C_s | 0.660 | 0.0005
          snow-slope-factor edition=asce-7-16 slope=4:12 thermal-factor=1 slippery=yes | C_s | 1 | 0.0001
          snow-drift-height edition=asce-7-16 ground-snow=20psf risk-category=II fetch=300ft | h_d | 5.237 | 0.0005
          snow-drift-height edition=asce-7-22 ground-snow=30psf risk-category=II winter-wind=0.55 fetch=60ft | h_d | 3.147 | 0.0005
          snow-unbalanced edition=asce-7-16 ground-snow=30psf risk-category=II slope=6:12 eave-to-ridge=30ft balanced=23.1psf | p_lee | 46.64 | 0.005
          snow-unbalanced edition=asce-7-16 ground-snow=30psf risk-category=II slope=6:12 eave-to-ridge=30ft balanced=23.1psf | x_d | 7.02 | 0.005
          snow-step-drift edition=asce-7-22 ground-snow=30psf risk-category=II winter-wind=0.55 rise=4ft lower-fetch=60ft balanced=23.94psf | p_wind | 42.24 | 0.01
          snow-step-drift edition=asce-7-22 ground-snow=40psf risk-category=II winter-wind=0.5 rise=10ft upper-fetch=100ft balanced=28.476psf | w_lee | 14.91 | 0.005
          snow-sliding edition=asce-7-16 flat-roof-snow=28psf eave-to-ridge=30ft slope=4:12 slippery=yes | p_sl | 22.4 | 0.001
          snow-roof edition=asce-7-16 ground-snow=30psf risk-category=II terrain=B roof-exposure=partially condition=above-freezing slippery=no slope=6:12 eave-to-ridge=30ft shape=ridged | p_3 | 46.64 | 0.005
          load-combinations edition=asce-7-16 method=lrfd dead=20psf live=50psf roof-live=15psf wind-toward=10psf | q_down | 111.5 | 0.001
          load-combinations edition=asce-7-16 method=lrfd dead=100psf wind-away=-150psf | q_up | -60 | 0.001
          load-combinations edition=asce-7-22 method=asd dead=3psf wind-away=-36.38psf | q_up | -20.03 | 0.005
          load-combinations edition=asce-7-16 method=asd dead=3psf snow=20psf wind-toward=16psf | q_down | 25.2 | 0.001
          load-combinations edition=asce-7-22 method=asd dead=3psf snow=30psf wind-toward=16psf | q_down | 25.95 | 0.001
          load-combinations edition=asce-7-22 method=lrfd dead=3psf snow=30psf wind-toward=16psf | q_down | 41.6 | 0.001
          slope-components load=20psf by=plan slope=18.435deg | q_n | 18.00 | 0.005
          slope-components load=3psf by=slope slope=18.435deg | q_s | 0.949 | 0.0005
          """)
  void asceCases(String command, String symbol, double expected, double tolerance) {
    assertThat(value(command, symbol, Measure.IMPERIAL)).isCloseTo(expected, within(tolerance));
    assertThat(value(command, symbol, Measure.METRIC)).isEqualTo(inMetric(command, symbol));
  }

  /** Eurocode cases A-E1 to A-E6, Pa and metres; tags beside the tests of calc. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          en-peak-pressure terrain=III wind-speed=26m/s height=8m | q_b | 422.5 | 0.05
          en-peak-pressure terrain=III wind-speed=26m/s height=8m | q_p | 659 | 3.3
          en-peak-pressure terrain=III wind-speed=22m/s height=13.48m | q_p | 577 | 0.5
          en-peak-pressure terrain=I wind-speed=30m/s height=7m | q_p | 1439 | 0.5
          en-zone-sizes width=32m height=8m | e_w | 16 | 0.0001
          en-zone-sizes width=12m height=7m | x_F | 3 | 0.0001
          en-roof-coefficient shape=duopitch pitch=15deg direction=up-the-slope zone=F area=2m2 | c_up | -1.6689 | 0.00005
          en-roof-coefficient shape=flat pitch=0deg direction=up-the-slope zone=F area=10m2 parapet-ratio=0.05 | c_up | -1.4 | 0.0001
          en-roof-coefficient shape=duopitch pitch=5deg direction=down-the-slope zone=I area=10m2 reading=other | c_down | -0.6 | 0.0001
          en-roof-pressure shape=duopitch pitch=10deg along=12m across=8m depth=4m height=7m peak-pressure=1439Pa area=10m2 direction=up-the-slope at-along=1m at-up=0.5m | w_up | -1871 | 0.5
          en-snow ground-snow=650Pa pitch=8.5deg other-pitch=8.5deg held=no | s_1 | 520 | 0.01
          en-snow ground-snow=650Pa pitch=8.5deg other-pitch=8.5deg held=no | s_2 | 260 | 0.01
          en-snow ground-snow=1000Pa pitch=45deg held=no | s_1 | 400 | 0.01
          en-snow-valley pitch=15deg | mu_2 | 1.2 | 0.0001
          en-snow-step-drift ground-snow=800Pa rise=1m upper-length=20m lower-length=10m | s_wall | 2000 | 0.01
          en-snow-step-drift ground-snow=800Pa rise=3m upper-length=9m lower-length=3m upper-pitch=20deg upper-slope-length=9m | s_wall | 2560 | 0.01
          en-snow-obstruction ground-snow=800Pa rise=0.6m | s_wall | 1200 | 0.01
          load-combinations-en dead=150Pa snow=800Pa wind-toward=400Pa wind-away=-1200Pa | q_down | 1762.5 | 0.01
          load-combinations-en dead=150Pa snow=800Pa wind-toward=400Pa wind-away=-1200Pa | q_up | -1650 | 0.01
          """)
  void eurocodeCases(String command, String symbol, double expected, double tolerance) {
    assertThat(value(command, symbol, Measure.METRIC)).isCloseTo(expected, within(tolerance));
  }

  @Test
  void aZoneThatTheRoofDoesNotHaveIsRefused() {
    assertThat(
            outcome(
                "en-roof-coefficient shape=flat pitch=0deg direction=up-the-slope zone=J area=10m2",
                Measure.METRIC))
        .isInstanceOf(Outcome.NotApplicable.class);
  }

  private static double value(String command, String symbol, Measure measure) {
    return measure.value(term(command, symbol, measure));
  }

  /** The same result as reached with formulas in feet and pounds. */
  private static double inMetric(String command, String symbol) {
    return Measure.METRIC.value(term(command, symbol, Measure.IMPERIAL));
  }

  private static Term term(String command, String symbol, Measure measure) {
    return outcome(command, measure).result().orElseThrow().stream()
        .filter(term -> term.symbol().equals(symbol))
        .findFirst()
        .orElseThrow();
  }

  private static Outcome<List<Term>> outcome(String command, Measure measure) {
    List<String> words = Arrays.asList(command.strip().split(" "));
    Calculation calculation = Calculations.find(words.get(0)).orElseThrow();
    Reading reading = GivenReader.read(calculation, words.subList(1, words.size()));
    assertThat(reading.problems()).isEmpty();
    return calculation.body().run(reading.given().orElseThrow(), new Work(measure));
  }
}

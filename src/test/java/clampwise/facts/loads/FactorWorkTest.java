package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.combination.Combination;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Work;
import clampwise.units.QuantityPrint;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The factors behind a combination of EN 1990, as they are shown. */
class FactorWorkTest {

  /** EN 1990, tables A1.1 and A1.2(B), from memory: 1.35 or 1.0, 1.5, psi 0.5 and 0.6. */
  @Test
  void theFactorsBehindACombinationAreShownWithWhereTheyComeFrom() {
    FieldSite site = EurocodeJobs.flat().site();
    assertThat(factors(site, true))
        .contains(
            "1.35 G + 1.5 S + 0.9 W: gamma_G_sup 1.35, gamma_Q 1.5, psi_0_w 0.6, f_W 0.9",
            "1.35 G + 0.75 S + 1.5 W: gamma_G_sup 1.35, gamma_Q 1.5, psi_0_s 0.5, f_S 0.75",
            "G + 1.5 W: gamma_G_inf 1, gamma_Q 1.5");
    assertThat(factors(site, false)).contains("G + S + 0.6 W: psi_0_w 0.6");
    assertThat(lines(site, Standard.of(site).result().orElseThrow().combinations().get(0), true))
        .extracting(line -> line.source().document())
        .contains("en-1990");
  }

  private static List<String> factors(FieldSite site, boolean design) {
    Standard standard = Standard.of(site).result().orElseThrow();
    return (design ? standard.combinations() : standard.service())
        .stream()
            .map(
                each ->
                    each.name()
                        + ": "
                        + lines(site, each, design).stream()
                            .map(Line::result)
                            .map(t -> t.symbol() + " " + QuantityPrint.trimmed(t.si(), 2))
                            .collect(Collectors.joining(", ")))
            .toList();
  }

  private static List<Line> lines(FieldSite site, Combination combination, boolean design) {
    Work work = new Work(Measure.METRIC);
    new FactorWork(site, combination, design).write(work);
    return work.lines();
  }
}

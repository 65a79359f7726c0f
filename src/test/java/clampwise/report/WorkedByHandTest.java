package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.facts.loads.CalcSheet.Part;
import clampwise.review.Reviewer;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The page that works one clamp by hand, held against the program's calculation sheet. */
class WorkedByHandTest {

  private static final Pattern ROW =
      Pattern.compile("(?m)^\\| [^|]* \\| (\\w+) \\| [^|]* \\| (-?[0-9.]+) \\| ([a-z²]*) *\\|");

  @Test
  void everyNumberWorkedByHandIsOneOfTheSheet() throws IOException {
    String page = Files.readString(Path.of("docs/worked-by-hand.md"));
    List<MatchResult> rows = ROW.matcher(page).results().toList();
    Part part =
        new Reviewer()
            .review(Path.of("examples/barn/job.yaml")).sheet().parts().stream()
                .filter(each -> each.title().equals("A.L3 seam 19 on SC-A, uplift"))
                .findFirst()
                .orElseThrow();
    List<Line> lines = part.sections().stream().flatMap(s -> s.lines().stream()).toList();
    assertThat(rows).hasSize(18);
    rows.forEach(row -> isInSheet(row, lines));
  }

  private static void isInSheet(MatchResult row, List<Line> lines) {
    BigDecimal printed = new BigDecimal(row.group(2));
    double lastDigit = Math.pow(10, -printed.scale());
    List<Double> values =
        lines.stream()
            .flatMap(
                line ->
                    java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(line.result()), line.inputs().stream()))
            .filter(term -> term.symbol().equals(row.group(1)))
            .filter(term -> Measure.IMPERIAL.of(term.dimension()).symbol().equals(row.group(3)))
            .map(Measure.IMPERIAL::value)
            .distinct()
            .toList();
    assertThat(values).as(row.group(1)).isNotEmpty();
    assertThat(values)
        .as(row.group())
        .anySatisfy(v -> assertThat(v).isCloseTo(printed.doubleValue(), within(lastDigit)));
  }
}

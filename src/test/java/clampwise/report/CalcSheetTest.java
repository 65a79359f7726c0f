package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calculation.PocketCalculator;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The calculation sheet of every example can be followed with a pocket calculator. */
class CalcSheetTest {

  private static final Reviewer REVIEWER = new Reviewer();
  private static final Pattern EQUATION =
      Pattern.compile("^   `(\\w+)(?: = (.*))? = (-?[0-9.]+)(?: [^`=]*)?`$");
  private static final Pattern INPUT = Pattern.compile("`(\\w+) = (-?[0-9.]+)(?: [^`]*)?`");

  /** The examples with loads: all but those that show only wiring, paper or metals. */
  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("examples"))) {
      List<Path> loaded =
          files
              .filter(file -> file.endsWith("job.yaml"))
              .filter(file -> !file.startsWith("examples/garage-wiring"))
              .filter(file -> !file.startsWith("examples/store-package"))
              .filter(file -> !file.startsWith("examples/boathouse"))
              .sorted()
              .toList();
      assertThat(loaded).hasSizeGreaterThanOrEqualTo(6);
      return loaded.stream();
    }
  }

  @Test
  void theSheetOfAnEmptyJobHasATitle() {
    Review empty = new Review("e.yaml", "", 0, List.of(), List.of(), List.of(), List.of());
    assertThat(CalcSheetMarkdown.of(List.of(empty)))
        .startsWith("# Calculation sheet: a job without a name\n");
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyLineOfTheMarkdownFollowsFromTheInputsPrintedInIt(Path job) {
    List<Line> lines = lines(CalcSheetMarkdown.of(List.of(REVIEWER.review(job))));
    assertThat(lines).hasSizeGreaterThan(40);
    assertThat(lines).filteredOn(line -> !line.formula().isEmpty()).hasSizeGreaterThan(25);
    lines.stream().filter(line -> !line.formula().isEmpty()).forEach(CalcSheetTest::follow);
  }

  private static List<Line> lines(String page) {
    List<Line> lines = new ArrayList<>();
    List<String> rows = page.lines().toList();
    for (int i = 0; i < rows.size(); i++) {
      Matcher equation = EQUATION.matcher(rows.get(i));
      if (equation.matches()) {
        String formula = equation.group(2) == null ? "" : equation.group(2);
        List<Term> inputs = formula.isEmpty() ? List.of() : inputs(rows.get(i + 1));
        Term result = term(equation.group(1), equation.group(3));
        lines.add(new Line(result, formula, inputs, Source.STATICS, ""));
      }
    }
    return lines;
  }

  private static List<Term> inputs(String row) {
    return INPUT.matcher(row).results().map(m -> term(m.group(1), m.group(2))).toList();
  }

  private static Term term(String symbol, String value) {
    return Term.number(symbol, symbol, Double.parseDouble(value));
  }

  private static void follow(Line line) {
    PocketCalculator calculator = new PocketCalculator(line);
    assertThat(calculator.unused()).as(line::toString).isEmpty();
    assertThat(calculator.value(Measure.METRIC))
        .as(line::toString)
        .isCloseTo(line.result().si(), within(calculator.rounding(Measure.METRIC)));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void aValueUsedInALaterLineIsOneThatAnEarlierLineGave(Path job) {
    var parts = REVIEWER.review(job).sheet().parts();
    assertThat(parts).isNotEmpty();
    for (var part : parts) {
      List<Line> lines = part.sections().stream().flatMap(s -> s.lines().stream()).toList();
      for (int i = 0; i < lines.size(); i++) {
        for (Term input : lines.get(i).inputs()) {
          List<Double> earlier =
              lines.subList(0, i).stream()
                  .map(Line::result)
                  .filter(term -> term.symbol().equals(input.symbol()))
                  .map(Term::si)
                  .toList();
          assertThat(earlier.isEmpty() || earlier.stream().anyMatch(v -> isNear(v, input.si())))
              .as(() -> part.title() + ": " + input)
              .isTrue();
        }
      }
    }
  }

  /** Who looks up a symbol finds the line of the section that gave it last. */
  @ParameterizedTest
  @MethodSource("jobs")
  void aValueIsTheOneThatItsSectionGaveLastUnderThatSymbol(Path job) {
    var parts = REVIEWER.review(job).sheet().parts();
    assertThat(parts).isNotEmpty();
    for (var part : parts) {
      for (var section : part.sections()) {
        Map<String, Double> given = new HashMap<>();
        for (Line line : section.lines()) {
          for (Term input : line.inputs()) {
            assertThat(isNear(given.getOrDefault(input.symbol(), input.si()), input.si()))
                .as(() -> part.title() + ", " + section.title() + ": " + input)
                .isTrue();
          }
          given.put(line.result().symbol(), line.result().si());
        }
      }
    }
  }

  @Test
  void theGoverningSnowFollowsFromTheCasesOfTheRoof() throws IOException {
    List<Line> lines =
        jobs()
            .flatMap(job -> lines(CalcSheetMarkdown.of(List.of(REVIEWER.review(job)))).stream())
            .toList();
    assertThat(lines)
        .filteredOn(line -> line.result().symbol().equals("S"))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.formula()).isIn("p_roof", "p_snow", "s"));
    assertThat(lines)
        .filteredOn(line -> line.result().symbol().equals("p_roof"))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line.formula()).isNotEmpty());
  }

  private static boolean isNear(double a, double b) {
    return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b));
  }

  @Test
  void theJsonHoldsTheSameLinesAsTheMarkdown() throws IOException {
    Review review = REVIEWER.review(Path.of("examples/barn/job.yaml"));
    StringWriter out = new StringWriter();
    CalcSheetJson.write(List.of(review), out);
    JsonNode sheet = new ObjectMapper().readTree(out.toString());
    assertThat(sheet.get("format").asText()).isEqualTo("clampwise-calc-sheet/1");
    List<JsonNode> lines = new ArrayList<>();
    sheet
        .get("jobs")
        .get(0)
        .get("parts")
        .forEach(
            part ->
                part.get("sections").forEach(section -> section.get("lines").forEach(lines::add)));
    assertThat(lines).hasSameSizeAs(lines(CalcSheetMarkdown.of(List.of(review))));
    assertThat(sheet.get("cautions").get(0).asText()).contains("not an engineer's approval");
  }

  @Test
  void aNameThatIsMarkupStaysText() {
    assertThat(Harmless.markdown("<b>*x*</b> [a](b) `c`"))
        .isEqualTo("\\<b\\>\\*x\\*\\</b\\> \\[a\\](b) \\`c\\`");
  }
}

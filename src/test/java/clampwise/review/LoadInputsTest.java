package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.source.SourceFiles;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A missing input silences its own checks only, and units change no verdict. */
class LoadInputsTest {

  private static final Path BASE = Path.of("rules/base/seam-roof.yaml");
  private static final Reviewer REVIEWER = new Reviewer();

  /** Rules that hold whatever the loads are: none of them may be lost with an input of loads. */
  private static final Set<String> NO_LOADS =
      Set.of(
          "attachment-off-seam",
          "clamp-outside-clamp-zone",
          "module-gap-too-small",
          "array-too-high",
          "frame-outside-mid-clamp-range",
          "count-differs-from-drawing",
          "frames-without-ground-path",
          "zone-width-claimed-too-small",
          "module-overhang-too-long");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wind-speed: 115 mph|the wind speed of the site is not given (site: wind-speed)|attachment-overloaded, module-above-design-rating, allowed-spacing-wider-than-loads-allow",
        "exposure: C|the exposure category of the site is not given (site: exposure)|attachment-overloaded, module-above-design-rating, allowed-spacing-wider-than-loads-allow",
        "ground-snow: 20 psf|the ground snow load of the site is not given (site: ground-snow)|attachment-overloaded, module-above-design-rating",
        "risk-category: II|the risk category of the building is not given (site: risk-category)|attachment-overloaded, module-above-design-rating",
        "mass: 21.5 kg|the mass of module M30 is not given (mass)|attachment-overloaded, module-above-design-rating, allowed-spacing-wider-than-loads-allow",
        "loads-are: allowable|whether the loads of SC-1 are allowable, ultimate or design is not given (loads-are)|attachment-overloaded, limit-states-mixed, allowed-spacing-wider-than-loads-allow",
        "up: 640 lbf|the test of SC-1 states no load away from the roof (up)|attachment-overloaded",
        "substrate: open-purlins|what the sheet rests on is not given (panels: steel seams: substrate)|attachment-overloaded, limit-states-mixed, allowed-spacing-wider-than-loads-allow"
      })
  void aMissingInputSilencesOnlyItsOwnChecks(String line, String reason, String rules)
      throws IOException {
    String text = Files.readString(BASE);
    Review review = review(without(text, line));
    assertThat(review.problems()).isEmpty();
    assertThat(review.findings())
        .extracting(Finding::rule)
        .allMatch("safety-factor-not-stated"::equals);
    assertThat(review.notChecked())
        .filteredOn(not -> not.reason().equals(reason))
        .extracting(NotChecked::rule)
        .contains(rules.split(", "));
    Set<String> silenced = silenced(review);
    silenced.removeAll(silenced(review(text)));
    assertThat(silenced).contains(rules.split(", ")).doesNotContainAnyElementsOf(NO_LOADS);
  }

  /** The usual value would hide what was meant. */
  @Test
  void aValueThatCannotBeReadIsNotTakenAsLeftOut() throws IOException {
    String text = Files.readString(BASE);
    Review review = review(text.replace("roof: gable", "roof: gable\n  enclosure: shut"));
    assertThat(review.problems()).hasSize(1);
    assertThat(review.notChecked())
        .filteredOn(not -> not.reason().equals("how the building is enclosed could not be read"))
        .extracting(NotChecked::rule)
        .contains("attachment-overloaded", "module-above-design-rating", "clip-overloaded");
  }

  private static String without(String text, String key) {
    String whole = text.lines().filter(l -> l.strip().equals(key)).findFirst().orElseThrow();
    return text.replace(whole + "\n", "");
  }

  @Test
  void aModuleNeedsNoTestOfItsClampAndAClampNoRatingOfItsModule() throws IOException {
    String text = Files.readString(BASE);
    assertThat(silenced(review(text.replace("          loads-are: allowable\n", ""))))
        .doesNotContain("module-above-design-rating");
    assertThat(silenced(review(text.replace("    loads-are: design\n", ""))))
        .contains("module-above-design-rating")
        .doesNotContain("attachment-overloaded");
  }

  @Test
  void metricAndImperialInputOfOneJobGiveTheSameFindings() throws IOException {
    String imperial = defective();
    String metric = metric(imperial);
    assertThat(metric).doesNotContain(" ft").doesNotContain(" psf").doesNotContain(" mph");
    List<String> found = verdicts(review(imperial));
    assertThat(found).anyMatch(finding -> finding.startsWith("attachment-overloaded"));
    assertThat(found).anyMatch(finding -> finding.startsWith("pressure-claimed-too-low"));
    assertThat(verdicts(review(metric))).isEqualTo(found);
  }

  private static String defective() throws IOException {
    return Files.readString(BASE)
        .replace("wind-speed: 115 mph", "wind-speed: 170 mph")
        .replace("31 ft 7 1/2 in", "31.625 ft")
        .replace(
            "claims:\n",
            "claims:\n  pressures-are: strength\n  pressures: {field: {up: 34 psf, down: 11 psf}}\n"
                + "  edge-factor: 1\n  tributary: {inner-line: 6.3 ft2}\n");
  }

  private static String metric(String text) {
    Map<String, Unit> units =
        Map.of(
            "ft2",
            Units.SQUARE_FOOT,
            "psf",
            Units.PSF,
            "mph",
            Units.MPH,
            "lbf",
            Units.POUND_FORCE,
            "ft",
            Unit.FOOT,
            "in",
            Unit.INCH);
    Map<String, String> words =
        Map.of("ft2", "m2", "psf", "Pa", "mph", "m/s", "lbf", "N", "ft", "m", "in", "m");
    Matcher number = Pattern.compile("(\\d+(?:\\.\\d+)?) (ft2|psf|mph|lbf|ft|in)\\b").matcher(text);
    return number.replaceAll(
        found -> {
          double si = units.get(found.group(2)).toSi(Double.parseDouble(found.group(1)));
          return java.math.BigDecimal.valueOf(si).toPlainString() + " " + words.get(found.group(2));
        });
  }

  private static List<String> verdicts(Review review) {
    assertThat(review.problems()).isEmpty();
    return review.findings().stream().map(LoadInputsTest::verdict).sorted().toList();
  }

  private static String verdict(Finding finding) {
    return finding.rule() + " " + finding.cause() + " " + finding.places().size();
  }

  private static Set<String> silenced(Review review) {
    Set<String> rules = new TreeSet<>();
    review.notChecked().forEach(not -> rules.add(not.rule()));
    return rules;
  }

  private static Review review(String text) {
    return REVIEWER.review("job.yaml", text.getBytes(StandardCharsets.UTF_8), SourceFiles.none());
  }
}

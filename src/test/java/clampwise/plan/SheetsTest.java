package clampwise.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;

/** What holds for the drawings of every example. */
class SheetsTest {

  private static final Reviewer REVIEWER = new Reviewer();
  private static final Map<Path, Review> REVIEWS = new HashMap<>();

  static Stream<Path> jobs() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("examples"))) {
      return files.filter(file -> file.endsWith("job.yaml")).sorted().toList().stream();
    }
  }

  private static List<PlanSheet> sheets(Path job) {
    return Sheets.of(REVIEWS.computeIfAbsent(job, REVIEWER::review));
  }

  private static List<Drawn> drawn(PlanSheet sheet) {
    return sheet.layers().stream().flatMap(layer -> layer.drawn().stream()).toList();
  }

  private static Envelope extent(Drawn drawn) {
    Envelope box = new Envelope();
    if (drawn instanceof Drawn.Lines lines) {
      lines.runs().forEach(r -> r.points().forEach(p -> box.expandToInclude(p.xMm(), p.yMm())));
    } else if (drawn instanceof Drawn.Disc disc) {
      box.expandToInclude(disc.centre().xMm(), disc.centre().yMm());
      box.expandBy(disc.radiusMm());
    } else if (drawn instanceof Drawn.Words words) {
      box.expandToInclude(Letters.box(words));
    }
    return box;
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void nothingRunsOffASheet(Path job) {
    Envelope paper = new Envelope(3, PlanSheet.WIDTH_MM - 3, 3, PlanSheet.HEIGHT_MM - 3);
    for (PlanSheet sheet : sheets(job)) {
      assertThat(drawn(sheet)).isNotEmpty().allMatch(mark -> paper.contains(extent(mark)));
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void numbersOfFindingsDoNotHideOneAnother(Path job) {
    for (PlanSheet sheet : sheets(job)) {
      List<Drawn> numbers = new ArrayList<>(drawn(sheet));
      numbers.removeIf(mark -> mark.style() != Style.WHITE_TEXT && mark.style() != Style.MARK_TEXT);
      for (Drawn one : numbers) {
        assertThat(numbers)
            .filteredOn(other -> other != one)
            .noneMatch(other -> extent(other).intersects(extent(one)));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void wordsOfTheStripDoNotHideOneAnother(Path job) {
    for (PlanSheet sheet : sheets(job)) {
      List<Drawn> words = new ArrayList<>();
      sheet.layers().stream()
          .filter(layer -> List.of("title", "legend", "detail").contains(layer.word()))
          .forEach(layer -> words.addAll(layer.drawn()));
      words.removeIf(mark -> !(mark instanceof Drawn.Words));
      for (Drawn one : words) {
        assertThat(words)
            .filteredOn(other -> other != one)
            .noneMatch(other -> extent(other).intersects(extent(one)));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyStyleThatIsDrawnIsExplained(Path job) {
    for (PlanSheet sheet : sheets(job)) {
      List<Drawn> drawn = drawn(sheet);
      for (Style style : Style.values()) {
        if (Sample.isExplained(style) && drawn.stream().anyMatch(mark -> mark.style() == style)) {
          assertThat(drawn)
              .anyMatch(mark -> mark instanceof Drawn.Words w && w.text().equals(style.meaning()));
        }
      }
    }
  }

  private static List<Envelope> extents(PlanSheet sheet, String layer, Style... styles) {
    return sheet.layers().stream()
        .filter(l -> l.word().equals(layer))
        .flatMap(l -> l.drawn().stream())
        .filter(mark -> List.of(styles).contains(mark.style()))
        .flatMap(SheetsTest::pieces)
        .map(SheetsTest::extent)
        .toList();
  }

  private static Stream<Drawn> pieces(Drawn drawn) {
    return drawn instanceof Drawn.Lines lines
        ? lines.runs().stream().map(r -> new Drawn.Lines(lines.style(), List.of(r), lines.about()))
        : Stream.of(drawn);
  }

  /** A hip roof of 16 m at the eave and 6 m at the ridge is narrower the higher a purlin lies. */
  @Test
  void purlinsEndWhereTheRoofEnds() {
    PlanSheet sheet = sheets(Path.of("examples/farmhouse/job.yaml")).get(0);
    Envelope roof = extents(sheet, "roof", Style.ROOF).get(0);
    double slope = (roof.getWidth() - roof.getWidth() * 6 / 16) / 2 / roof.getHeight();
    assertThat(extents(sheet, "seams", Style.SUPPORT))
        .isNotEmpty()
        .allSatisfy(
            purlin -> {
              double upMm = roof.getMaxY() - purlin.getMinY();
              assertThat(purlin.getMinX()).isCloseTo(roof.getMinX() + upMm * slope, within(0.1));
              assertThat(purlin.getMaxX()).isCloseTo(roof.getMaxX() - upMm * slope, within(0.1));
            });
  }

  /** The clamps of the dairy are in two rows of the table, 234 to 326 mm and 0 to 430 mm. */
  @ParameterizedTest
  @ValueSource(strings = {"dairy-l-shaped", "farmhouse", "packing-hall", "workshop-ribs"})
  void clampsOfACleanModuleAreDrawnInItsZones(String job) {
    PlanSheet sheet = sheets(Path.of("examples", job, "job.yaml")).get(0);
    List<Envelope> zones = extents(sheet, "detail", Style.CLAMP_ZONE);
    assertThat(extents(sheet, "detail", Style.ATTACHMENT_MID, Style.ATTACHMENT_END))
        .hasSize(4)
        .allMatch(clamp -> zones.stream().anyMatch(zone -> zone.covers(clamp.centre())));
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void everyDistanceOfAChainIsWritten(Path job) {
    for (PlanSheet sheet : sheets(job)) {
      everyDistanceIsWritten(sheet, "dimensions", 2);
      everyDistanceIsWritten(sheet, "detail", 1);
    }
  }

  /** A chain is a line and its ticks; distances are one fewer than ticks. */
  private static void everyDistanceIsWritten(PlanSheet sheet, String layer, int chains) {
    int lines = extents(sheet, layer, Style.DIMENSION).size();
    assertThat(distances(sheet, layer)).hasSize(Math.max(lines - 2 * chains, 0));
  }

  private static List<Drawn> distances(PlanSheet sheet, String layer) {
    return sheet.layers().stream()
        .filter(l -> l.word().equals(layer))
        .flatMap(l -> l.drawn().stream())
        .filter(mark -> mark instanceof Drawn.Words w && w.text().matches("[0-9][-0-9. '\"a-z]*"))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void nothingIsExplainedThatIsNotDrawn(Path job) {
    for (PlanSheet sheet : sheets(job)) {
      List<Style> outside =
          sheet.layers().stream()
              .filter(layer -> !layer.word().equals("legend"))
              .flatMap(layer -> layer.drawn().stream())
              .map(Drawn::style)
              .toList();
      assertThat(drawn(sheet))
          .extracting(Drawn::style)
          .filteredOn(Sample::isExplained)
          .allMatch(outside::contains);
    }
  }

  /** A sample is as large and has as many strokes as what it stands for, so that it is known. */
  @Test
  void theSampleOfALugIsTheSignOnTheRoof() {
    PlanSheet sheet = sheets(Path.of("examples/barn-junior/job.yaml")).get(0);
    List<Envelope> sign = extents(sheet, "legend", Style.LUG);
    assertThat(sign).hasSize(4);
    assertThat(extents(sheet, "bonding", Style.LUG)).hasSize(3 * sign.size());
  }
}

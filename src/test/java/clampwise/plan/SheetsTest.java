package clampwise.plan;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
}

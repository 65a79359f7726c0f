package clampwise.facts.loads;

import static clampwise.facts.loads.LoadedJob.seams;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Equilibrium, symmetry and growth of the forces on the attachments of a field. */
class FieldForcesTest {

  private static final String ONE_COLUMN =
      """
      loads: {clamps-share-edge: %s}
      modules: {M30: {length: 6 ft}}
      fields:
        A:
          block: {at: [20 ft 4 in, 8 ft], rows: 2, columns: 1}
          attach: {per-edge: ~, lines: {1: %s, 2: %s, 3: %s}}
      """;

  /** Seams lie 4, 20, 36, 52 and 68 in from the left corner of modules of 72 in. */
  private static LoadedJob column(String share, String seams) {
    return seams(ONE_COLUMN.formatted(share, seams, seams, seams));
  }

  private static double attachments(
      LoadedJob job, int combination, ToDoubleFunction<Attachment> arm) {
    List<Attachment> all = job.field().field().attachments();
    double sum = 0;
    for (int i = 0; i < all.size(); i++) {
      sum += job.upliftN(i, combination) * arm.applyAsDouble(all.get(i));
    }
    return sum;
  }

  private static double modules(
      LoadedJob job, int combination, ToDoubleFunction<PlacedModule> arm) {
    double sum = 0;
    for (PlacedModule module : job.field().field().modules()) {
      double upliftPa = -job.field().loads().of(module).upPa()[combination];
      sum += upliftPa * module.alongM() * module.upM() * arm.applyAsDouble(module);
    }
    return sum;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "fields: {A: {attach: {per-edge: 3}}}",
        "fields: {A: {attach: {per-edge: 4}}}",
        "fields: {A: {block: {at: [0 ft, 0 ft], rows: 6, columns: 12}}}",
        "loads: {method: lrfd}",
        "loads: {clamps-share-edge: yes}"
      })
  void attachmentsTogetherCarryAllModulesInEveryCombination(String over) {
    LoadedJob job = seams(over);

    for (int k = 0; k < job.field().combinations().size(); k++) {
      double loadN = modules(job, k, module -> 1);
      assertThat(attachments(job, k, attachment -> 1)).isCloseTo(loadN, within(1e-6));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "fields: {A: {attach: {per-edge: 4}}}",
        "fields: {A: {block: {at: [0 ft, 0 ft], rows: 6, columns: 12}}}"
      })
  void theirMomentsAreThoseOfTheModules(String over) {
    LoadedJob job = seams(over);

    for (int k = 0; k < job.field().combinations().size(); k++) {
      double alongNm = modules(job, k, module -> module.leftM() + module.alongM() / 2);
      double upNm = modules(job, k, module -> module.bottomM() + module.upM() / 2);
      double halfGapNm = Math.abs(modules(job, k, module -> 0.006));
      assertThat(attachments(job, k, Attachment::alongM)).isCloseTo(alongNm, within(1e-5));
      assertThat(attachments(job, k, Attachment::upM)).isCloseTo(upNm, within(halfGapNm + 1e-5));
    }
  }

  @Test
  void clampsAtEqualDistancesFromTheCornersTakeEqualForces() {
    LoadedJob job = column("no", "[16, 20]");

    for (int left = 0; left < 6; left += 2) {
      assertThat(job.upliftN(left, worst(job)))
          .isCloseTo(job.upliftN(left + 1, worst(job)), within(1e-7));
    }
  }

  /** Three supports, 4, 36 and 68 in of 72 in: the continuous beam worked out by hand. */
  @Test
  void aMiddleClampTakesMoreThanThoseAtTheEnds() {
    LoadedJob job = column("no", "[16, 18, 20]");

    double spanM = 32;
    double overM = 4;
    double middle = 2 * (5 * spanM / 8 - 3 * overM * overM / (4 * spanM)) / 72;
    int k = worst(job);
    double edgeN = job.upliftN(0, k) + job.upliftN(1, k) + job.upliftN(2, k);
    assertThat(job.upliftN(1, k)).isCloseTo(middle * edgeN, within(1e-6));
    assertThat(job.upliftN(1, k)).isGreaterThan(1.5 * job.upliftN(0, k));
  }

  @Test
  void clampsThatShareAnEdgeTakeEqualForces() {
    LoadedJob job = column("yes", "[16, 17, 20]");

    int k = worst(job);
    assertThat(job.upliftN(0, k)).isCloseTo(job.upliftN(1, k), within(1e-9));
    assertThat(job.upliftN(0, k)).isCloseTo(job.upliftN(2, k), within(1e-9));
  }

  private static int worst(LoadedJob job) {
    int worst = 0;
    for (int k = 1; k < job.field().combinations().size(); k++) {
      worst = job.upliftN(0, k) > job.upliftN(0, worst) ? k : worst;
    }
    return worst;
  }

  private static List<Double> uplifts(String pattern, String... values) {
    List<Double> uplifts = new ArrayList<>();
    for (String value : values) {
      uplifts.add(seams(pattern.formatted(value)).mostUpliftPa());
    }
    return uplifts;
  }

  private static void rises(List<Double> values) {
    assertThat(values).isSorted().doesNotHaveDuplicates();
  }

  @Test
  void upliftRisesWithTheSpeedOfTheWind() {
    rises(uplifts("site: {wind-speed: %s}", "90 mph", "100 mph", "115 mph", "140 mph", "180 mph"));
  }

  @Test
  void upliftRisesFromExposureBToD() {
    rises(uplifts("site: {exposure: %s}", "B", "C", "D"));
  }

  @Test
  void upliftRisesWithTheHeightOfTheRoof() {
    rises(uplifts("building: {mean-roof-height: %s}", "20 ft", "25 ft", "32 ft", "45 ft", "58 ft"));
  }

  @Test
  void upliftFallsAsTheArrayGetsHeavier() {
    rises(uplifts("loads: {dead: %s}", "8 psf", "5 psf", "3 psf", "0 psf"));
  }

  /** A field of 25,000 modules is one sum more: the work grows with what is there. */
  @Test
  void aHundredThousandAttachmentsStillCarryAllModules() {
    LoadedJob job =
        seams(
            """
            building: {length: 4000 ft, width: 400 ft}
            planes: {south: {size: 4000 ft x 200 ft}}
            fields: {A: {block: {at: [30 ft, 8 ft], rows: 48, columns: 520}, attach: {per-edge: 4}}}
            """);

    int k = worst(job);
    assertThat(job.field().field().attachments()).hasSizeGreaterThan(100_000);
    double loadN = modules(job, k, module -> 1);
    assertThat(attachments(job, k, attachment -> 1)).isCloseTo(loadN, within(1e-9 * loadN));
    double clipsN = new ClipSums(job.plane()).sumN();
    double mostN =
        SeamRun.of(job.plane(), List.of()).stream()
            .flatMap(run -> run.pulls().result().orElseThrow().stream())
            .mapToDouble(pull -> pull.forces().get(k).normalN())
            .sum();
    assertThat(clipsN).isCloseTo(mostN, within(1e-9 * loadN));
  }
}

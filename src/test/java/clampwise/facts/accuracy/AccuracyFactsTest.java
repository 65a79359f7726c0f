package clampwise.facts.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.facts.BaseJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Stacks of tolerances and measured corners, against numbers worked out by hand. */
class AccuracyFactsTest {

  private static final String NARROW =
      "modules: {M30: {clamp-zones: [{side: long, zone: 90 mm to 460 mm}]}}\n";

  /**
   * Modules every 1734 mm over seams every 406.4 mm, the first corner at 6096 mm: the seams in the
   * second module lie 94.8 mm from its left corner, 4.8 mm into a zone from 90 mm [computed].
   */
  @Test
  void theSecondModuleBearsWhatItsLeftSeamIsIntoTheZone() {
    RowStack row = with(NARROW + install("{tolerance: 3 mm}")).facts(RowStack.class).get(0);

    assertThat(row.worstAt()).isEqualTo("A.R1C2");
    assertThat(row.worstSlackM()).isEqualTo(0.0048);
    assertThat(row.worstM()).isEqualTo(0.006);
    assertThat(row.likelyM()).isEqualTo(0.0042426);
    assertThat(row.marks()).isEqualTo("set from a measured mark: C2");
  }

  /** 20 mm into the right end of the zone is the third module: 4 x 5 mm would be too much. */
  @Test
  void afterAMarkTheStackBeginsAnew() {
    String install = install("{tolerance: 4.8 mm, re-datum: {columns: 1}}");
    RowStack row = with(NARROW + install).facts(RowStack.class).get(0);

    assertThat(row.worstM()).isEqualTo(0.0048);
    assertThat(row.worstSlackM()).isEqualTo(0.0048);
  }

  @Test
  void aZoneAsWideAsThePitchBearsAnyStack() {
    assertThat(with(install("{tolerance: 50 mm}")).facts(RowStack.class))
        .allMatch(row -> row.worstM() <= row.worstSlackM());
  }

  /** Worked example of tolerances [computed]: 20 modules at 2 mm are 40 mm, or 8.9 mm. */
  @Test
  void aColumnOfTwentyAddsUpTo40Millimetres() {
    String tall =
        "planes: {south: {size: 100 ft x 90 ft}}\nfields: {A: {block: {rows: 20}}}\n"
            + install("{tolerance: 2 mm}");
    ColumnStack column = with(tall).only(ColumnStack.class);

    assertThat(column.modules()).isEqualTo(20);
    assertThat(column.worstM()).isEqualTo(0.040);
    assertThat(column.likelyM()).isBetween(0.0089, 0.00895);
    assertThat(column.slackM()).isEqualTo(0.008);
    assertThat(column.marks()).isEqualTo("set from a measured mark every 4 rows");
  }

  @Test
  void aGapInAColumnEndsIt() {
    String holed =
        "fields: {A: {block: {rows: 5, omit: [R3C1, R3C2, R3C3, R2C4]}}}\n"
            + install("{tolerance: 2 mm}");

    assertThat(with(holed).only(ColumnStack.class))
        .extracting(ColumnStack::column, ColumnStack::modules)
        .containsExactly("column 4 of field A", 3);
  }

  @Test
  void withoutAToleranceNothingAddsUp() {
    BaseJob job = with(install("{tolerance: ~}"));

    for (var type : List.of(RowStack.class, ColumnStack.class)) {
      assertThat(job.missing(type))
          .containsExactly(
              "how far a module may be off its place is not given (install: tolerance)");
    }
  }

  @Test
  void aFieldThatNobodyMeasuredIsNotChecked() {
    BaseJob job = with(install("{squareness: ~}"));

    assertThat(job.missing(DiagonalPair.class))
        .containsExactly("nobody has measured both diagonals of field A (diagonals)");
    assertThat(job.missing(SquareCorner.class))
        .containsExactly("nobody has measured a corner with its diagonal of field A (diagonal)");
  }

  @Test
  void lengthsThatMakeNoCornerAreNotChecked() {
    BaseJob job = with(install("{squareness: {A: {diagonal: 8 m}}}"));

    assertThat(job.missing(SquareCorner.class))
        .containsExactly("the sides and the diagonal of field A make no corner");
  }

  private static String install(String keys) {
    return "install: " + keys;
  }

  private static BaseJob with(String over) {
    return BaseJob.with("ready-roof", over);
  }

  /** 4 x 1722 + 3 x 12 by 3 x 1134 + 2 x 12 mm: sqrt(6924^2 + 3426^2) = 7725.23 mm [computed]. */
  @Test
  void theDiagonalOfTheLayoutGoesFromOuterCornerToOuterCorner() {
    DrawnDiagonal size = BaseJob.with("ready-roof", "{}").only(DrawnDiagonal.class);

    assertThat(size.drawnM()).isCloseTo(7.72523, within(5e-6));
    assertThat(size.squareM()).isCloseTo(7.73000, within(5e-6));
    assertThat(size.mostM()).isCloseTo(0.01545, within(5e-6));
  }

  /** 30 mm along at the top and at both ends the same sides: one diagonal longer, one shorter. */
  @Test
  void aSkewedFieldHasTheSizeOfTheSquareOne() {
    double alongM = 6.924;
    double upM = Math.sqrt(3.426 * 3.426 - 0.03 * 0.03);
    String skewed =
        "install: {squareness: {A: {diagonals: [%.6f m, %.6f m]}}}"
            .formatted(Math.hypot(alongM + 0.03, upM), Math.hypot(alongM - 0.03, upM));

    DrawnDiagonal size = BaseJob.with("ready-roof", skewed).only(DrawnDiagonal.class);

    assertThat(size.differenceM()).isLessThan(1e-5);
  }

  @Test
  void aFieldWithoutACornerIsNotCheckedForItsSize() {
    BaseJob job = BaseJob.with("ready-roof", "fields: {A: {block: {omit: [R3C4]}}}");

    assertThat(job.facts(DrawnDiagonal.class)).isEmpty();
    assertThat(job.missing(DrawnDiagonal.class))
        .containsExactly("field A has no module at some of its corners");
  }
}

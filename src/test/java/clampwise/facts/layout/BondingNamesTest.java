package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problem;
import clampwise.source.Problems;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Names of modules in the bonding. */
class BondingNamesTest {

  @Test
  void aLugOrJumperOnAModuleThatIsNotThereIsReportedWithTheNearestName() {
    List<Problem> problems = problems("A.R1C9", "A.R1C1");

    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).found()).isEqualTo("A.R1C9, which is no module of the layout");
    assertThat(problems.get(0).nearest()).isEqualTo(Optional.of("A.R1C1"));
    assertThat(problems.get(0).at().start().line()).isEqualTo(16);
  }

  @Test
  void aPlaceWithoutItsFieldIsNearestToTheOnlyModuleThere() {
    assertThat(problems("R2C1", "A.R1C1"))
        .singleElement()
        .satisfies(problem -> assertThat(problem.nearest()).hasValue("A.R2C1"));
  }

  @Test
  void namesOfPlacedModulesAreNotReported() {
    assertThat(problems("A.R2C2", "A.R1C1")).isEmpty();
  }

  @Test
  void aRowThatAFieldDoesNotHaveIsReportedWhereItStands() {
    assertThat(problemsOf("{on: A.R1C1}", "{field: A, row: 3}"))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.found()).isEqualTo("row 3; field A has 2 rows");
              assertThat(problem.at().start().line()).isEqualTo(17);
            });
  }

  private static List<Problem> problems(String lugOn, String jumperFrom) {
    return problemsOf("{on: " + lugOn + "}", "{from: " + jumperFrom + ", to: A.R1C2}");
  }

  private static List<Problem> problemsOf(String lug, String jumper) {
    Problems problems = new Problems();
    Job job =
        JobReader.read(
                "job.yaml",
                """
                job: two columns
                panels:
                  sheet: {kind: standing-seam, pitch: 16 in}
                planes:
                  south: {panel: sheet, size: 10 m x 6 m, seams: {first: 8 in}}
                modules:
                  M: {length: 1722 mm, width: 1134 mm}
                fields:
                  A:
                    plane: south
                    module: M
                    orientation: landscape
                    gap: 12 mm
                    block: {at: [1 m, 1 m], rows: 2, columns: 2}
                bonding:
                  lugs: [%s]
                  jumpers: [%s]
                """
                    .formatted(lug, jumper),
                problems)
            .orElseThrow();
    BondingNames.check(
        new LayoutBuilder(LimitsReader.read()).build(job, CatalogueReader.empty(), problems),
        problems);
    return problems.sorted();
  }
}

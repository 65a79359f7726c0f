package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JobTableTest {

  private final Sheet sheet = new Sheet(80, Paint.NONE);
  private final JobTable table = new JobTable();

  @Test
  void everyJobHasItsCountsAndAllHaveTheirSums() {
    table.add(SampleReview.full());
    table.add(SampleReview.of(SampleReview.frame()));
    table.write(sheet);
    assertThat(sheet)
        .hasToString(
            """
            Jobs (2)

              unread  errors  warnings  notes  not checked  job
                   1       2         0      1            1  barn/job.yaml
                   0       1         0      0            0  job.yaml
                   1       3         0      1            1  all of them

            """);
  }

  @Test
  void ofManyJobsThoseInWhichSomethingIsWrongAreListed() {
    for (int i = 0; i < 50; i++) {
      table.add(SampleReview.of());
    }
    table.add(SampleReview.full());
    table.addFault();
    table.write(sheet);
    assertThat(sheet.toString().lines())
        .hasSize(8)
        .contains("Jobs (52)", "  50 jobs without errors and warnings: counted, not listed.")
        .contains("  1 job not reviewed: a fault of clampwise.");
  }

  @Test
  void oneJobAloneHasNoTable() {
    table.add(SampleReview.full());
    table.write(sheet);
    assertThat(sheet).hasToString("");
  }
}

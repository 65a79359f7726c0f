package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import clampwise.source.Problems;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvValuesTest {

  @TempDir private Path folder;
  private final Problems problems = new Problems();

  @Test
  void surveyedSeamsPointIntoTheCsv() throws IOException {
    List<Quantity.Offset> surveyed = survey("seam,along\n1,231 mm\n2,690 mm\n");
    assertThat(said()).isEmpty();
    assertThat(surveyed).hasSize(2);
    assertThat(surveyed.get(1).m()).isCloseTo(0.69, within(1e-12));
    assertThat(surveyed.get(1).at().toString()).endsWith("seams.csv:3:3");
  }

  @Test
  void aColumnMayNameTheUnitOfItsNumbers() throws IOException {
    List<Quantity.Offset> surveyed = survey("seam;along [in]\n1;9\n2;27 1/2\n");
    assertThat(said()).isEmpty();
    assertThat(surveyed.get(1).m()).isCloseTo(0.6985, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "seam,alnog⏎1,2 m|seams.csv:1:6 the unknown column \"alnog\"",
        "along⏎2 m|seams.csv:1:1 no column named \"seam\"",
        "seam,seam,along⏎1,1,2 m|seams.csv:1:6 the column \"seam\" twice",
        "seam,along⏎1,2 m⏎3,4 m|seams.csv:3:1 seam \"3\"",
        "seam,along⏎1,|seams.csv:2:1 a row without \"along\"",
        "seam,along⏎1,2|seams.csv:2:3 \"2\" without a unit",
        "seam,along⏎1,2 psf|seams.csv:2:3 \"2 psf\", which is a pressure"
      })
  void problemsPointIntoTheCsv(String csv, String said) throws IOException {
    survey(csv.replace('⏎', '\n'));
    assertThat(said()).contains(said);
  }

  @Test
  void aMisspeltColumnNamesTheNearestOne() throws IOException {
    survey("seam,alnog\n1,2 m\n");
    assertThat(problems.sorted())
        .anyMatch(problem -> problem.nearest().equals(Optional.of("along")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "along,upp⏎1 m,2 m|1:7 the unknown column \"upp\"; nearest up",
        "along,up⏎|1:1 column names without rows",
        "along,up⏎1 m,2 m,,⏎1 m,3 m,MC-1⏎1,5,3 m|3:9 a cell without a column, in 2 rows"
      })
  void oneMistakeInATableOfAttachmentsIsOneProblem(String csv, String said) throws IOException {
    write("points.csv", csv.replace('⏎', '\n'));
    read(ReadJob.SMALL + "    attach: {file: points.csv}\n");
    assertThat(problems.sorted())
        .extracting(
            problem ->
                problem.at().toString().replaceFirst(".*csv:", "")
                    + " "
                    + problem.found()
                    + problem.nearest().map(word -> "; nearest " + word).orElse(""))
        .containsExactly(said);
    assertThat(problems.sorted().get(0).expected()).doesNotContain("seam");
  }

  @Test
  void surveyAndSurveyFileExcludeEachOther() throws IOException {
    write("seams.csv", "seam,along\n1,2 m\n");
    read(ReadJob.SMALL.replace("slope: 4:12", "seams: {surveyed: [1 m], survey-file: seams.csv}"));
    assertThat(said()).containsExactly("job.yaml:5:55 both survey-file and surveyed");
  }

  @Test
  void attachmentsComeFromACsv() throws IOException {
    write("points.csv", "along,up,part\n9 ft,7 ft,\n10 ft,7 ft,SC-B\n");
    Field field =
        read(ReadJob.SMALL + "    attach: {file: points.csv}\n").fields().find("A").orElseThrow();
    List<Attach.Point> points = field.attach().orElseThrow().points();
    assertThat(said()).isEmpty();
    assertThat(points.get(0).part()).isEmpty();
    assertThat(points.get(1).part().orElseThrow().value()).isEqualTo("SC-B");
    assertThat(points.get(1).at().along().at().toString()).endsWith("points.csv:3:1");
    assertThat(points.get(1).at().up().at().toString()).endsWith("points.csv:3:7");
    assertThat(field.attach().orElseThrow().file().orElseThrow().value()).isEqualTo("points.csv");
  }

  @Test
  void aHundredThousandRowsAreReadInSeconds() throws IOException {
    StringBuilder rows = new StringBuilder("along,up\n");
    for (int i = 0; i < 100_000; i++) {
      rows.append(i % 3000).append(".5 ft,").append(i / 3000).append(" ft 3 in\n");
    }
    write("points.csv", rows.toString());
    Assertions.assertTimeout(
        Duration.ofSeconds(60),
        () -> {
          Job job = read(ReadJob.SMALL + "    attach: {file: points.csv}\n");
          assertThat(job.fields().find("A").orElseThrow().attach().orElseThrow().points())
              .hasSize(100_000);
        });
    assertThat(said()).isEmpty();
  }

  private List<Quantity.Offset> survey(String csv) throws IOException {
    write("seams.csv", csv);
    Job job = read(ReadJob.SMALL.replace("slope: 4:12", "seams: {survey-file: seams.csv}"));
    return job.planes().find("p").orElseThrow().seams().orElseThrow().surveyed();
  }

  private Job read(String text) throws IOException {
    write("job.yaml", text);
    return JobReader.read(folder.resolve("job.yaml"), problems).orElseThrow();
  }

  private void write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
  }

  private List<String> said() {
    String prefix = folder.toString().replace('\\', '/') + "/";
    return problems.sorted().stream()
        .map(problem -> (problem.at() + " " + problem.found()).replace(prefix, ""))
        .toList();
  }
}

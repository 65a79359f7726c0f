package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example jobs are laid out without complaint. */
class ExampleLayoutsTest {

  @ParameterizedTest
  @CsvSource({
    "barn, 48, 2",
    "barn-junior, 48, 2",
    "depot-surveyed, 40, 2",
    "shelter-corrugated, 26, 2",
    "workshop-ribs, 64, 2",
  })
  void anExampleIsLaidOutAsItsFileSays(String example, int modules, int leastClampsAnEdge) {
    Problems problems = new Problems();
    Job job = JobReader.read(Path.of("examples", example, "job.yaml"), problems).orElseThrow();
    Layout layout =
        new LayoutBuilder(LimitsReader.read()).build(job, CatalogueReader.read(), problems);

    assertThat(problems.sorted()).isEmpty();
    assertThat(layout.fields().stream().mapToInt(field -> field.modules().size()).sum())
        .isEqualTo(modules);
    assertThat(layout.fields().stream().flatMap(field -> field.edges().stream()))
        .isNotEmpty()
        .allMatch(edge -> edge.attachments().size() >= leastClampsAnEdge);
  }
}

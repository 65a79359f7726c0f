package clampwise.facts.layout;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.job.JobReader;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Things drawn where their plane is not, and seams wider than their pitch. */
class OffThePlaneTest {

  @Test
  void anObstructionOffItsPlaneIsAProblem() throws IOException {
    assertThat(found("at: [80 ft, 16 ft]", "at: [180 ft, 16 ft]"))
        .containsExactly("an obstruction off its plane");
    assertThat(found("at: [80 ft, 16 ft]", "at: [99.5 ft, 16 ft]")).isEmpty();
  }

  @Test
  void anExpansionJointOffItsPlaneIsAProblem() throws IOException {
    assertThat(found("    seams: {first: 8 in}", joints("120 ft")))
        .containsExactly("an expansion joint off its plane");
    assertThat(found("    seams: {first: 8 in}", joints("90 ft"))).isEmpty();
  }

  @Test
  void aPitchNoWiderThanTheSeamIsAProblem() throws IOException {
    assertThat(found("top-width: 8 mm", "top-width: 16 in"))
        .containsExactly("a pitch of 16 in where a seam is 16 in wide");
  }

  private static String joints(String at) {
    return "    expansion-joints: [" + at + "]\n    seams: {first: 8 in}";
  }

  private static List<String> found(String from, String to) throws IOException {
    String text = Files.readString(Path.of("rules/base/seam-roof.yaml"));
    assertThat(text).contains(from);
    Problems problems = new Problems();
    YamlReader.read("job.yaml", text.replace(from, to), problems)
        .flatMap(root -> JobReader.read("job.yaml", root, problems))
        .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
        .orElseThrow();
    return problems.sorted().stream().map(Problem::found).toList();
  }
}

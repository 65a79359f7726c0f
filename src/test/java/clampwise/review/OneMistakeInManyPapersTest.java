package clampwise.review;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A part or jumper that is drawn otherwise than all papers have it is one mistake. */
class OneMistakeInManyPapersTest {

  private static final Path BASE = Path.of("rules/base/ready-roof.yaml");
  private static final String LIST =
      """
      takeoff:
        parts-list: {M30: 12, SC-1: 33, MC-1: 17, EC-1: 17, BJ-1: 4, LG-1: 2}
      """;
  private static final String CLAMP = "    SC-1: {profiles: [double-lock], torque: 15 N m}\n";
  private static final String DRAWN = "attachment: SC-1";

  private static final String COLUMNS =
      "columns: [{at: [6 m, 8 ft], modules: 3}, {at: [7.734 m, 8 ft], modules: 3},"
          + " {at: [12 m, 8 ft], modules: 3}]";
  private static final String REACHING = "    - {from: A.R1C1, to: A.R1C2}\n";
  private static final List<String> BONDS =
      List.of("jumper-too-short", "frames-without-ground-path");

  private final Reviewer reviewer = new Reviewer();

  @Test
  void aClampThatDoesNotFitBringsWhatTheSheetTheLogAndTheListLack() throws IOException {
    String swapped =
        job().replace(CLAMP, CLAMP + CLAMP.replace("SC-1", "SC-2").replace("double-lock", "bulb"));

    List<Finding> findings = findings(swapped.replace(DRAWN, "attachment: SC-2"));

    assertThat(leading(findings)).containsExactly("clamp-not-made-for-profile");
    assertThat(findings)
        .extracting(Finding::rule)
        .containsExactlyInAnyOrder(
            "clamp-not-made-for-profile",
            "torque-not-stated",
            "torque-log-incomplete",
            "parts-list-short",
            "parts-list-too-long");
  }

  @Test
  void aClampThatFitsIsOneFindingOfThePapers() throws IOException {
    String swapped = job().replace(CLAMP, CLAMP + CLAMP.replace("SC-1", "SC-2"));

    assertThat(leading(findings(swapped.replace(DRAWN, "attachment: SC-2"))))
        .containsExactly("torque-not-stated");
  }

  @Test
  void anotherPartOnTheListAloneIsOneFinding() throws IOException {
    String swapped = job().replace(CLAMP, CLAMP + CLAMP.replace("SC-1", "SC-2"));
    List<Finding> findings = findings(swapped.replace("M30: 12, SC-1: 33", "M30: 12, SC-2: 33"));

    assertThat(leading(findings)).containsExactly("parts-list-short");
    assertThat(findings.get(0).message())
        .isEqualTo(
            "seam clamp SC-1: 0 on the list, 32 on the drawing; 32 are missing; listed is SC-2,"
                + " which no drawing has");
  }

  /** The count of the drawing and the list have the jumper that the layout lacks. */
  @Test
  void aMissingJumperIsNoWrongCount() throws IOException {
    String two = "    - {from: A.R1C1, to: A.R1C2}\n    - {from: A.R1C3, to: A.R1C4}\n";
    String lacking = job().replace("    - {field: A}\n", two) + "claims: {jumpers: 3}\n";
    List<Finding> findings = findings(lacking);

    assertThat(leading(findings)).containsExactly("frames-without-ground-path");
    assertThat(findings)
        .filteredOn(finding -> finding.rule().equals("count-differs-from-drawing"))
        .extracting(Finding::remedy)
        .containsExactly("add the 1 that the ground paths lack");
  }

  /** The columns beyond the short jumper are grounded once it reaches; wherever it stands. */
  @Test
  void aJumperThatDoesNotReachBringsTheFramesWithoutGround() throws IOException {
    String gap =
        job()
            .replace("block: {at: [20 ft, 8 ft], rows: 3, columns: 4}", COLUMNS)
            .replace("BJ-1: {bonding: yes", "BJ-1: {length: 200 mm, bonding: yes")
            .replace("    - {field: A}\n", REACHING + "    - {from: A.R1C2, to: A.R1C3}\n");

    List<Finding> bonds =
        findings(gap).stream().filter(each -> BONDS.contains(each.rule())).toList();
    assertThat(bonds).extracting(Finding::rule).containsExactlyInAnyOrderElementsOf(BONDS);
    assertThat(leading(bonds)).containsExactly("jumper-too-short");
  }

  @Test
  void aCountThatIsOffByMoreIsAMistakeOfItsOwn() throws IOException {
    String two = "    - {from: A.R1C1, to: A.R1C2}\n    - {from: A.R1C3, to: A.R1C4}\n";
    String lacking = job().replace("    - {field: A}\n", two) + "claims: {jumpers: 4}\n";

    assertThat(leading(findings(lacking)))
        .containsExactly("frames-without-ground-path", "count-differs-from-drawing");
  }

  private static String job() throws IOException {
    String base = Files.readString(BASE);
    assertThat(base).contains(CLAMP, DRAWN);
    return base + LIST;
  }

  private List<Finding> findings(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Review review = reviewer.review("job.yaml", bytes, SourceFiles.none());
    assertThat(review.problems()).isEmpty();
    return review.findings();
  }

  private static List<String> leading(List<Finding> findings) {
    return findings.stream().filter(Finding::leads).map(Finding::rule).toList();
  }
}

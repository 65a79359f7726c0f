package clampwise.facts.bonding;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Islands of frames, counted by hand. */
class BondingTest {

  private static final String RATED = "bonding: yes";
  private static final String PLAIN = "bonding: no";
  private static final String SILENT = "gap: 12 mm";

  /** Four rows by ten columns take nine jumpers as a tree; handbook example 3.9 [computed]. */
  @Test
  void nineJumpersTieTenColumnsAsATree() {
    Facts facts = facts(RATED, 10, jumpersBetween(1, 10));

    assertThat(islands(facts)).singleElement().satisfies(BondingTest::holdsAllForty);
  }

  private static void holdsAllForty(GroundPath island) {
    assertThat(island.frames()).isEqualTo(40);
    assertThat(island.lugs()).isEqualTo(1);
    assertThat(island.cutOff()).isZero();
  }

  /** A tree falls apart with each edge taken out: here six columns of four, and four of four. */
  @Test
  void eightJumpersLeaveTwoIslandsAndTheMissingOneIsNamed() {
    Facts facts = facts(RATED, 10, jumpersBetween(1, 6) + jumpersBetween(7, 10));

    assertThat(islands(facts)).extracting(GroundPath::frames).containsExactly(24, 16);
    assertThat(islands(facts)).extracting(GroundPath::lugs).containsExactly(1, 0);
    assertThat(islands(facts).get(1).where()).isEqualTo("A.R1C7 and the 15 bonded to it");
    assertThat(islands(facts).get(1).remedy())
        .isEqualTo("add a bonding jumper from A.R1C6 to A.R1C7");
  }

  @Test
  void theJumpersThatAreNamedGroundAllColumnsTogether() {
    Facts facts = facts(RATED, 4, "");

    assertThat(islands(facts)).extracting(GroundPath::frames).containsExactly(4, 4, 4, 4);
    assertThat(islands(facts))
        .extracting(GroundPath::remedy)
        .containsOnly(
            "add a bonding jumper between each pair of neighbouring columns:"
                + " A.R1C1 - A.R1C2, A.R1C2 - A.R1C3, A.R1C3 - A.R1C4 (3)");
  }

  @Test
  void tenColumnsWithoutJumpersAreOneMistake() {
    List<GroundPath> islands = islands(facts(RATED, 10, ""));

    assertThat(islands)
        .hasSize(10)
        .extracting(GroundPath::cause)
        .containsOnly(islands.get(0).cause());
    assertThat(islands.get(9).cutOff()).isEqualTo(36);
    assertThat(islands.get(9).where())
        .isEqualTo("9 groups in field A, tied neither to each other nor to the rest");
    assertThat(islands.get(9).remedy())
        .isEqualTo(
            "add a bonding jumper between each pair of neighbouring columns:"
                + " A.R1C1 - A.R1C2, A.R1C2 - A.R1C3, ... A.R1C9 - A.R1C10 (9)");
  }

  @Test
  void jumpersMissingHereAndThereAreAllNamed() {
    String jumpers = jumpersBetween(1, 3) + jumpersBetween(4, 7) + jumpersBetween(8, 10);

    assertThat(islands(facts(RATED, 10, jumpers)).get(1).remedy())
        .isEqualTo("add 2 bonding jumpers: A.R1C3 - A.R1C4, A.R1C7 - A.R1C8");
  }

  @Test
  void aColumnApartFromAllOthersIsGivenALug() {
    String free =
        job(RATED, 2, "")
            .replace(
                "    block: {at: [1 m, 1 m], rows: 4, columns: 2}\n",
                "    columns: [{at: [1 m, 1 m], modules: 1}, {at: [9 m, 1 m], modules: 1}]\n");

    assertThat(islands(facts(free)).get(1).where()).isEqualTo("A.R1C2");
    assertThat(islands(facts(free)).get(1).remedy())
        .isEqualTo("add a grounding lug on A.R1C2 or a frame bonded to it");
  }

  @Test
  void oneEntryForAFieldTiesAllItsColumns() {
    assertThat(islands(facts(RATED, 10, "{field: A, row: 4}"))).hasSize(1);
  }

  @Test
  void aRowAboveTheFieldIsAProblemAndLeavesTheGroundUnchecked() {
    Problems problems = new Problems();
    Facts facts = facts(job(RATED, 3, "{field: A, row: 5}"), problems);

    assertThat(problems.sorted()).hasSize(1);
    assertThat(islands(facts)).isEmpty();
    assertThat(reasons(GroundPath.class, facts))
        .containsExactly("the bonding names row 5; field A has 4 rows");
  }

  @Test
  void plainMidClampsCountAsBondsAndAreTold() {
    Facts facts = facts(PLAIN, 2, "{field: A}");

    assertThat(islands(facts)).hasSize(1);
    assertThat(of(BondRating.class, facts))
        .filteredOn(rating -> !rating.rated())
        .extracting(BondRating::part)
        .containsExactly("MC");
  }

  @Test
  void whereTheClampsDoNotSayWhetherTheyBondNothingPasses() {
    Facts facts = facts(SILENT, 2, "{field: A}");

    assertThat(islands(facts)).isEmpty();
    assertThat(reasons(GroundPath.class, facts))
        .containsExactly("whether mid clamp MC is rated for bonding is not given (bonding)");
    assertThat(reasons(BondRating.class, facts))
        .containsExactly("whether mid clamp MC is rated for bonding is not given (bonding)");
  }

  @Test
  void anIslandWithoutALugIsFoundEvenIfItsClampsAreInDoubt() {
    Facts facts = facts(SILENT, 2, "");

    assertThat(islands(facts)).extracting(GroundPath::module).containsExactly("A.R1C2");
    assertThat(islands(facts)).extracting(GroundPath::lugs).containsExactly(0);
  }

  @Test
  void aFieldWithoutAScheduleIsNotChecked() {
    Facts facts = facts(job(RATED, 2, "{field: A}").replace("    attach: {per-edge: 2}\n", ""));

    assertThat(islands(facts)).isEmpty();
    assertThat(reasons(GroundPath.class, facts)).hasSize(1);
  }

  @Test
  void aJobWithoutAWordOnBondingIsNotChecked() {
    String job = job(RATED, 2, "");
    Facts facts = facts(job.substring(0, job.indexOf("bonding:\n")));

    assertThat(List.of(GroundPath.class, FieldGround.class, BondRating.class))
        .allSatisfy(
            question ->
                assertThat(reasons(question, facts))
                    .containsExactly("the job says nothing about bonding (bonding)"));
  }

  /** The second column begins beside the third module of the first one. */
  @Test
  void columnsAreTiedWhereTheyReallyLieSideBySide() {
    String stepped =
        job(RATED, 2, "")
            .replace(
                "    block: {at: [1 m, 1 m], rows: 4, columns: 2}\n",
                "    columns: [{at: [1 m, 1 m], modules: 3}, {at: [2734 mm, 3292 mm], modules: 3}]\n");

    assertThat(islands(facts(stepped)).get(1).remedy())
        .isEqualTo("add a bonding jumper from A.R3C1 to A.R1C2");
  }

  private static String jumpersBetween(int first, int last) {
    StringBuilder jumpers = new StringBuilder();
    for (int column = first; column < last; column++) {
      jumpers.append("{from: A.R1C%d, to: A.R1C%d}, ".formatted(column, column + 1));
    }
    return jumpers.toString();
  }

  private static List<GroundPath> islands(Facts facts) {
    return of(GroundPath.class, facts);
  }

  private static <T extends Fact> List<T> of(Class<T> type, Facts facts) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private static List<String> reasons(Class<? extends Fact> question, Facts facts) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == question)
        .map(Missing::reason)
        .toList();
  }

  private static Facts facts(String midClamp, int columns, String jumpers) {
    return facts(job(midClamp, columns, jumpers));
  }

  private static Facts facts(String text) {
    Problems problems = new Problems();
    Facts facts = facts(text, problems);
    assertThat(problems.sorted()).isEmpty();
    return facts;
  }

  private static Facts facts(String text, Problems problems) {
    Job job = JobReader.read("job.yaml", text, problems).orElseThrow();
    return Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems);
  }

  private static String job(String midClamp, int columns, String jumpers) {
    return """
        job: columns
        panels:
          sheet: {kind: standing-seam, pitch: 16 in}
        planes:
          south: {panel: sheet, size: 30 m x 8 m, seams: {first: 8 in}}
        modules:
          M: {length: 1722 mm, width: 1134 mm, clamp-zones: [{side: long, zone: 0 mm to 430 mm}]}
        parts:
          mid-clamps:
            MC: {%s}
          jumpers:
            BJ: {bonding: yes}
          lugs:
            LG: {bonding: yes}
        fields:
          A:
            plane: south
            module: M
            orientation: landscape
            mid-clamp: MC
            gap: 12 mm
            attach: {per-edge: 2}
            block: {at: [1 m, 1 m], rows: 4, columns: %d}
        bonding:
          jumper: BJ
          lug: LG
          lugs: [{on: A.R1C1}]
          jumpers: [%s]
        """
        .formatted(midClamp, columns, jumpers);
  }
}

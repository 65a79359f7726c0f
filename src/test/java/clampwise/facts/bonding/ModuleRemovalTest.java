package clampwise.facts.bonding;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One module taken out, counted by hand on columns of four; cases of handbook 3.12. */
class ModuleRemovalTest {

  /** All but the ten modules at the tops cut others off, the one with the lug all 39 [computed]. */
  @Test
  void inAChainOfTenColumnsThirtyModulesCutOthersOff() {
    ModuleRemoval removal = removal(10, "{on: A.R1C1}", "{field: A}");

    assertThat(removal.cutting()).isEqualTo(30);
    assertThat(removal.module()).isEqualTo("A.R1C1");
    assertThat(removal.cutOff()).isEqualTo(39);
    assertThat(removal.remedy())
        .isEqualTo(
            "5 bonding jumpers (A.R4C1 - A.R4C2, A.R4C3 - A.R4C4, ... A.R4C9 - A.R4C10)"
                + " and a grounding lug on A.R4C10");
  }

  /** Ten columns tied at both ends take 18 jumpers; handbook 3.9 [computed]. */
  @Test
  void aLoopOfJumpersWithTwoLugsLeavesNoneCutOff() {
    ModuleRemoval removal =
        removal(10, "{on: A.R1C1}, {on: A.R4C10}", "{field: A}, {field: A, row: 4}");

    assertThat(removal.cutting()).isZero();
    assertThat(removal.cutOff()).isZero();
    assertThat(removal.remedy()).isEmpty();
  }

  @Test
  void aLoopOfJumpersWithOneLugHangsOnItsModule() {
    ModuleRemoval removal = removal(10, "{on: A.R1C1}", "{field: A}, {field: A, row: 4}");

    assertThat(removal.cutting()).isEqualTo(1);
    assertThat(removal.cutOff()).isEqualTo(39);
    assertThat(removal.remedy()).isEqualTo("a grounding lug on A.R4C10");
  }

  /** The top module may go; the one below it takes the top with it. */
  @Test
  void inASingleColumnWithOneLugOnlyTheLastModuleMayGo() {
    ModuleRemoval removal = removal(1, "{on: A.R1C1}", "");

    assertThat(removal.cutting()).isEqualTo(3);
    assertThat(removal.cutOff()).isEqualTo(3);
    assertThat(removal.remedy()).isEqualTo("a grounding lug on A.R4C1");
  }

  @Test
  void aJumperThatDoesNotReachTheNextColumnIsNotAskedFor() {
    String shortJumper =
        job(2, "{on: A.R1C1}", "{field: A, part: LONG}")
            .replace(
                "BJ: {bonding: yes}",
                "BJ: {bonding: yes, length: 11 mm}\n    LONG: {bonding: yes}");

    assertThat(removals(shortJumper).get(0).remedy())
        .isEqualTo("2 grounding lugs (A.R4C1, A.R4C2)");
  }

  /** No jumper yet, and the set that goes with the three that are asked for: 5 ends, 3 parts. */
  @Test
  void whatIsAskedForStandsOnTopOfTheMissingJumpers() {
    ModuleRemoval removal = removal(4, "{on: A.R1C1}", "");

    assertThat(removal.once()).isEqualTo("once all frames are grounded, ");
    assertThat(removal.cutOff()).isEqualTo(15);
    assertThat(removal.cutting()).isEqualTo(12);
    assertThat(removal.remedy())
        .isEqualTo(
            "2 bonding jumpers (A.R4C1 - A.R4C2, A.R4C3 - A.R4C4) and a grounding lug on A.R4C4");
  }

  @Test
  void aTemporaryJumperIsSaidOfAllFields() {
    String bridged = job(4, "{on: A.R1C1}", "{field: A}") + "  temporary-jumpers: yes\n";

    assertThat(removals(bridged)).singleElement().matches(ModuleRemoval::bridged);
  }

  @Test
  void aFieldWithoutGroundIsLeftToTheRuleOnLugs() {
    assertThat(removals(job(2, "", "{field: A}"))).isEmpty();
  }

  /** With clamps in doubt the loop may be none; what cuts off even so is found. */
  @Test
  void whatHoldsOnlyByPartsInDoubtIsNotChecked() {
    String loop = job(2, "{on: A.R1C1}, {on: A.R4C2}", "{field: A}, {field: A, row: 4}");
    String inDoubt = loop.replace("MC: {bonding: yes}", "MC: {gap: 12 mm}");

    assertThat(removals(inDoubt)).isEmpty();
    assertThat(facts(inDoubt).missing())
        .filteredOn(missing -> missing.question() == ModuleRemoval.class)
        .extracting(Missing::reason)
        .containsExactly("whether mid clamp MC is rated for bonding is not given (bonding)");
    assertThat(removals(inDoubt.replace("{on: A.R1C1}, ", ""))).hasSize(1);
  }

  private static ModuleRemoval removal(int columns, String lugs, String jumpers) {
    List<ModuleRemoval> all = removals(job(columns, lugs, jumpers));
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static List<ModuleRemoval> removals(String job) {
    return facts(job).facts().stream()
        .filter(ModuleRemoval.class::isInstance)
        .map(ModuleRemoval.class::cast)
        .toList();
  }

  private static Facts facts(String text) {
    Problems problems = new Problems();
    Job job = JobReader.read("job.yaml", text, problems).orElseThrow();
    Facts facts = Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems);
    assertThat(problems.sorted()).isEmpty();
    return facts;
  }

  private static String job(int columns, String lugs, String jumpers) {
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
            MC: {bonding: yes}
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
          lugs: [%s]
          jumpers: [%s]
        """
        .formatted(columns, lugs, jumpers);
  }
}

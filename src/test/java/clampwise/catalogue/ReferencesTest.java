package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.job.Job;
import clampwise.job.JobReader;
import clampwise.job.Unreadable;
import clampwise.source.Problems;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReferencesTest {

  private static final Catalogue CATALOGUE = CatalogueReader.read();

  private static final String JOB =
      """
      job: Barn
      panels:
        roof: {kind: standing-seam, assumed: [pitch]}
      planes:
        south: {panel: roof}
      fields:
        A:
          plane: south
          module: PV-108-30
          orientation: landscape
          attachment: SC-A
          mid-clamp: MC-30
          end-clamp: EC-30
          attach: {points: [{at: [1 m, 1 m], part: SC-B, clamp: MC-35}]}
          other-modules: {R1C1: PV-60-35}
      bonding:
        jumper: BJ-A
        lug: LG-A
        jumpers: [{field: A, part: BJ-A}]
        lugs: [{on: A.R1C1, part: LG-A}]
      """;

  @Test
  void namesOfJobAndCatalogueAreKnown() {
    assertThat(said(JOB)).isEmpty();
  }

  @Test
  void aMisspeltProfileIsReportedWithTheNearest() {
    String text = JOB.replace("standing-seam,", "standing-seam, profile: snaplock,");
    assertThat(said(text))
        .containsExactly("3:40 no part made for a profile named \"snaplock\", nearest snap-lock");
    assertThat(said(text.replace("snaplock", "Snap Lock"))).isEmpty();
    assertThat(said(text.replace("snaplock", "clip-rib"))).isEmpty();
  }

  @Test
  void anotherNumberIsAnotherProfile() {
    String text = JOB.replace("standing-seam,", "trapezoidal, profile: trapezoid-35,");
    assertThat(said(text)).isEmpty();
    assertThat(said(text.replace("trapezoid-35", "trapezoid32")))
        .singleElement()
        .asString()
        .endsWith("trapezoid-32");
  }

  @ParameterizedTest
  @CsvSource({
    "nec-2019,nec-2017",
    "NCE 2020,nec-2020",
    "NEC2023,nec-2023",
    "nec-20200,nec-2020",
    "IEC 62458,iec-62548",
    "BS 7617,bs-7671",
    "as/nzs 5035,as-nzs-5033"
  })
  void aMisspeltElectricalCodeOfTheSiteIsReportedWithTheNearest(String written, String nearest) {
    assertThat(said(JOB + "site: {codes: {electrical: \"" + written + "\"}}\n"))
        .containsExactly(
            "21:28 no edition of a code named \"" + written + "\", nearest " + nearest);
  }

  @ParameterizedTest
  @CsvSource({"IFC 2019,ifc-2018", "ICF 2021,ifc-2021", "nfpa1,nfpa-1", "Oregan,oregon"})
  void aMisspeltFireCodeOfTheSiteIsReportedWithTheNearest(String written, String nearest) {
    assertThat(said(JOB + "site: {codes: {fire: \"" + written + "\"}}\n"))
        .containsExactly(
            "21:22 no edition of a code named \"" + written + "\", nearest " + nearest);
  }

  /** That these codes come out every three years is from memory. */
  @ParameterizedTest
  @ValueSource(
      strings = {"NEC 2020", "nec/2017", "NEC 2014", "nec-2026", "IEC 62548", "code of the island"})
  void anotherEditionIsNoSlip(String written) {
    assertThat(said(JOB + "site: {codes: {electrical: " + written + "}}\n")).isEmpty();
  }

  @Test
  void everyDanglingNameIsReportedWithTheNearest() {
    String text =
        JOB.replace("[pitch]", "[picth]")
            .replace("panel: roof", "panel: rof")
            .replace("plane: south", "plane: soth")
            .replace("module: PV-108-30", "module: PV-108-33")
            .replace("attachment: SC-A", "attachment: SCA")
            .replace("mid-clamp: MC-30", "mid-clamp: MC30")
            .replace("end-clamp: EC-30", "end-clamp: EC30")
            .replace("part: SC-B", "part: SCB")
            .replace("clamp: MC-35", "clamp: MC_35")
            .replace("R1C1: PV-60-35", "R1C1: PV-60-36")
            .replace("jumper: BJ-A", "jumper: BJA")
            .replace("lug: LG-A", "lug: LGA")
            .replace("{field: A, part: BJ-A}", "{field: a, part: BJ_A}")
            .replace("part: LG-A", "part: LG_A");
    assertThat(said(text))
        .containsExactly(
            "3:41 no key of a panel named \"picth\", nearest pitch",
            "5:18 no roof covering named \"rof\", nearest roof",
            "8:12 no roof plane named \"soth\", nearest south",
            "9:13 no module type named \"PV-108-33\", nearest PV-108-30",
            "11:17 no seam clamp or rib bracket named \"SCA\", nearest SC-A",
            "12:16 no mid clamp named \"MC30\", nearest MC-30",
            "13:16 no end clamp named \"EC30\", nearest EC-30",
            "14:46 no seam clamp or rib bracket named \"SCB\", nearest SC-B",
            "14:58 no mid or end clamp named \"MC_35\", nearest MC-35",
            "15:27 no module type named \"PV-60-36\", nearest PV-60-35",
            "17:11 no bonding jumper named \"BJA\", nearest BJ-A",
            "18:8 no grounding lug named \"LGA\", nearest LG-A",
            "19:21 no field named \"a\", nearest A",
            "19:30 no bonding jumper named \"BJ_A\", nearest BJ-A",
            "20:29 no grounding lug named \"LG_A\", nearest LG-A");
  }

  @Test
  void namesUnderWhichTheWorkListsSomethingAreHeldAgainstTheJob() {
    String work =
        """
        install:
          squareness: {a: {diagonals: [5 m, 5 m]}, A: {diagonals: [5 m, 5 m]}}
          torques: {SCA: 15 N m, MC-30: 14 N m, PV-108-30: 1 N m}
          torque-log: {SC-A: 12, EC_30: 4}
        survey: {photos: [profile, picth]}
        """;
    assertThat(said(JOB + work))
        .containsExactly(
            "22:16 no field named \"a\", nearest A",
            "23:13 no part named \"SCA\", nearest SC-A",
            "23:41 no part named \"PV-108-30\"",
            "24:26 no part named \"EC_30\", nearest EC-30",
            "25:28 no key of a panel named \"picth\", nearest pitch");
  }

  @Test
  void whatStandsUnderAMisspeltNameIsNoStatementOnTheOneThatWasMeant() {
    String work =
        "install: {torques: {SCA: 15 N m}, torque-log: {MC-30: 4}}\nsurvey: {photos: [picth]}\n";
    Unreadable lost = checked(JOB + work, new Problems()).unreadable();
    assertThat(lost.touches("install", "torques", "SC-A")).isTrue();
    assertThat(lost.touches("install", "torque-log")).isFalse();
    assertThat(lost.touches("survey", "photos")).isTrue();
  }

  @Test
  void namesOfASectionThatCouldNotBeReadAreNotReported() {
    assertThat(said(JOB.replace("planes:", "roofplains:")))
        .containsExactly("4:1 the unknown key \"roofplains\"");
    assertThat(said(JOB.replace("  south: {panel: roof}", "  - south: {panel: roof}")))
        .containsExactly("5:3 a list");
  }

  @Test
  void aNameWhoseThingCouldNotBeReadIsNotReportedAgain() {
    assertThat(said(JOB.replace("{panel: roof}", "{slope: 4:12}")))
        .containsExactly("5:10 a plane without panel");
  }

  @Test
  void aListingMayNamePartsThatNobodyHasWrittenOut() {
    String modules = "modules: {M: {length: 1 m, width: 1 m, listed-with: [SC-A, MC-30, XY]}}\n";
    assertThat(said(JOB + modules)).isEmpty();
  }

  private static List<String> said(String text) {
    Problems problems = new Problems();
    checked(text, problems);
    return problems.sorted().stream()
        .map(
            problem ->
                problem.at().toString().replace("job.yaml:", "")
                    + " "
                    + problem.found()
                    + problem.nearest().map(word -> ", nearest " + word).orElse(""))
        .toList();
  }

  private static Job checked(String text, Problems problems) {
    Job job = JobReader.read("job.yaml", text, problems).orElseThrow();
    return References.check(job, CATALOGUE, problems);
  }
}

package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Coverage;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.maven.plugin.surefire.log.api.NullConsoleLogger;
import org.apache.maven.plugins.surefire.report.ReportTestCase;
import org.apache.maven.plugins.surefire.report.ReportTestSuite;
import org.apache.maven.plugins.surefire.report.TestSuiteXmlParser;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * JUnit XML as the report plug-in of Maven Surefire reads it ({@code surefire-report-parser}), and
 * as the XML parser of the JDK does.
 */
class JUnitReportTest {

  private static List<ReportTestSuite> read(Run run) throws Exception {
    byte[] xml = Snapshot.bytes(ReportKind.JUNIT, run);
    try (InputStreamReader text =
        new InputStreamReader(new ByteArrayInputStream(xml), StandardCharsets.UTF_8)) {
      return new TestSuiteXmlParser(new NullConsoleLogger()).parse(text);
    }
  }

  private static Document document(Run run) throws Exception {
    byte[] xml = Snapshot.bytes(ReportKind.JUNIT, run);
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(xml));
  }

  private static Run junior() {
    return new Run(
        List.of(new Reviewer().review(Path.of("examples/barn-junior/job.yaml"))), "0.1.0", 1);
  }

  /** The plug-in makes a suite of each class, here of each rule of a job. */
  private static List<ReportTestCase> cases(Run run) throws Exception {
    return read(run).stream().flatMap(suite -> suite.getTestCases().stream()).toList();
  }

  @Test
  void aBuildServerCountsWhatTheReviewCounts() throws Exception {
    Run run = junior();
    Review review = run.reviews().get(0);
    List<ReportTestCase> cases = cases(run);

    long met = review.coverage().stream().filter(each -> each.met() > 0).count();
    assertThat(cases).filteredOn(ReportTestCase::hasSkipped).hasSize(review.notChecked().size());
    assertThat(cases).filteredOn(ReportTestCase::isSuccessful).hasSize((int) met);
    assertThat(cases).filteredOn(ReportTestCase::hasError).isEmpty();
    assertThat(cases)
        .filteredOn(ReportTestCase::hasFailure)
        .extracting(ReportTestCase::getClassName)
        .containsAll(review.findings().stream().map(finding -> finding.rule()).toList());
  }

  @Test
  void theSuiteSaysHowManyOfEachThereAre() throws Exception {
    var suite = (Element) document(Snapshot.sample()).getElementsByTagName("testsuite").item(0);
    for (String count : List.of("failure", "error", "skipped")) {
      String said = suite.getAttribute(count.equals("skipped") ? count : count + "s");
      assertThat(said).isEqualTo("" + suite.getElementsByTagName(count).getLength());
    }
    assertThat(suite.getAttribute("tests"))
        .isEqualTo("" + suite.getElementsByTagName("testcase").getLength());
  }

  @Test
  void failuresSayWhatWasFoundAndHowMuchItWeighs() throws Exception {
    List<ReportTestCase> cases = cases(Snapshot.sample());
    assertThat(cases.stream().filter(ReportTestCase::hasFailure))
        .filteredOn(
            each -> each.getFullClassName().equals("barn/job.yaml.clamp-outside-clamp-zone"))
        .hasSize(16)
        .extracting(each -> each.getFailureType() + " " + each.getFailureMessage())
        .contains(
            "error Clamp outside the module's clamp zone: 82 mm against 234 mm",
            "error the clamp on seam 7 sits 81 mm from the corner of A.R1C3; the rated zone begins"
                + " at 234 mm");
    assertThat(cases)
        .filteredOn(ReportTestCase::hasError)
        .extracting(ReportTestCase::getClassName)
        .containsExactly("not-readable");
  }

  @Test
  void whatWasNotCheckedIsSkippedWithItsReason() throws Exception {
    assertThat(cases(Snapshot.sample()))
        .filteredOn(ReportTestCase::hasSkipped)
        .extracting(each -> each.getClassName() + " " + each.getName())
        .containsExactly(
            "mid-clamp-shimmed fields.A / block",
            "row-off-seams fields.A / block",
            "clamp-on-wrong-substrate fields.A",
            "sheet-too-thin fields.A");
    assertThat(Snapshot.text(ReportKind.JUNIT, Snapshot.sample()))
        .contains("not checked: the substrate of barn roof is not given (barn/job.yaml:18:3)")
        .contains("accepted by roof engineer until 2027-03-31: the crew has shims of 2 mm");
  }

  @Test
  void aRuleThatHadNothingToLookAtIsNoPass() throws Exception {
    Review review =
        new Review(
            "a.yaml",
            "A",
            4,
            List.of(),
            List.of(),
            List.of(),
            List.of(new Coverage("x", 0, 0, 0), new Coverage("y", 7, 0, 0)));
    assertThat(cases(new Run(List.of(review), "0.1.0")))
        .extracting(ReportTestCase::getClassName)
        .containsExactly("y");
  }

  @Test
  void aJobOfNoModulesIsNoPassAndAFaultIsAnError() throws Exception {
    Review empty = new Review("a.yaml", "A", 0, List.of(), List.of(), List.of(), List.of());
    List<ReportTestCase> cases = cases(new Run(List.of(empty), "0.1.0", 70));
    assertThat(cases).hasSize(2);
    assertThat(cases.get(0).hasSkipped()).isTrue();
    assertThat(cases.get(1).hasError()).isTrue();
  }

  @Test
  void hostileTextsAreNothingButTexts() throws Exception {
    Run run = HostileReview.run();
    Document document = document(run);
    List<String> elements = new ArrayList<>();
    var all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      elements.add(all.item(i).getNodeName());
    }
    assertThat(elements)
        .containsOnly(
            "testsuites",
            "testsuite",
            "properties",
            "property",
            "testcase",
            "failure",
            "error",
            "skipped",
            "system-out");
    var cases = document.getElementsByTagName("testcase");
    for (String text : HostileReview.TEXTS) {
      String name = Harmless.of(text);
      boolean there = false;
      for (int i = 0; i < cases.getLength(); i++) {
        there |= cases.item(i).getAttributes().getNamedItem("name").getNodeValue().equals(name);
      }
      assertThat(there).as(name).isTrue();
    }
  }

  @Test
  void nothingThatATerminalObeysIsInTheFile() {
    assertThat(Snapshot.text(ReportKind.JUNIT, HostileReview.run()).replace("\n", ""))
        .satisfies(text -> assertThat(Harmless.of(text)).isEqualTo(text));
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    assertThat(Snapshot.bytes(ReportKind.JUNIT, junior()))
        .isEqualTo(Snapshot.bytes(ReportKind.JUNIT, junior()));
  }

  @Test
  void theSampleIsWrittenAsItWasLookedAt() throws Exception {
    Snapshot.check("sample.xml", Snapshot.text(ReportKind.JUNIT, Snapshot.sample()));
  }
}

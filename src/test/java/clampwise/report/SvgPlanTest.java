package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.FindingOrder;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** Plan drawings, read by the XML parser of the JDK. */
class SvgPlanTest {

  private static final Reviewer REVIEWER = new Reviewer();

  private static byte[] written(Review review) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportKind.SVG.write(new Run(List.of(review), "0"), out);
    return out.toByteArray();
  }

  private static Document drawn(Review review) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(written(review)));
  }

  private static Document drawn(String example) throws Exception {
    return drawn(REVIEWER.review(Path.of("examples", example, "job.yaml")));
  }

  private static List<Element> elements(Document document, String name, String attribute) {
    NodeList all = document.getElementsByTagName(name);
    return java.util.stream.IntStream.range(0, all.getLength())
        .mapToObj(i -> (Element) all.item(i))
        .filter(element -> element.hasAttribute(attribute))
        .toList();
  }

  @Test
  void everyModuleIsDrawnWithItsName() throws Exception {
    Review review = REVIEWER.review(Path.of("examples/barn/job.yaml"));
    List<Element> modules = elements(drawn(review), "path", "data-module");

    assertThat(modules).hasSize(review.modules());
    assertThat(modules.get(0).getTextContent()).contains("A.R1C1", "% of its design rating");
  }

  /** A module of 2 m at 1:50 is 40 mm; the sheet says its scale. */
  @Test
  void lengthsAreToTheScaleThatIsWritten() throws Exception {
    Document document = drawn("farmhouse");
    assertThat(document.getDocumentElement().getTextContent()).contains("Scale 1:50 on A3");
    Element module = elements(document, "path", "data-module").get(0);
    String[] corners = module.getAttribute("d").replace("M", "").replace("Z", "").split("L");
    double widthMm =
        Double.parseDouble(corners[1].split(" ")[0]) - Double.parseDouble(corners[0].split(" ")[0]);
    Review review = REVIEWER.review(Path.of("examples/farmhouse/job.yaml"));
    double widthM = review.facts().orElseThrow().layout().fields().get(0).modules().get(0).alongM();
    assertThat(widthMm).isCloseTo(widthM * 1000 / 50, org.assertj.core.data.Offset.offset(0.011));
  }

  @Test
  void marksHaveTheNumbersOfTheList() throws Exception {
    Review review = REVIEWER.review(Path.of("examples/barn-junior/job.yaml"));
    Document document = drawn(review);
    Set<String> marked = new HashSet<>();
    elements(document, "text", "data-finding").forEach(mark -> marked.add(mark.getTextContent()));
    FindingOrder order = FindingOrder.of(review.findings());
    String elsewhere = document.getDocumentElement().getTextContent();

    assertThat(elsewhere).contains("Findings without a place here:");
    for (var finding : order.followers().leading()) {
      String number = order.number(finding).orElseThrow().toString();
      boolean isMarked = marked.contains(number);
      boolean isNamed =
          elsewhere.matches("(?s).*without a place here:[^a-z]*\\b" + number + "\\b.*");
      assertThat(isMarked || isNamed).as(number + " " + finding.rule()).isTrue();
    }
  }

  @Test
  void aPlaneHasItsOwnSheetWithNorth() throws Exception {
    Document document = drawn("farmhouse");
    String text = document.getDocumentElement().getTextContent();
    assertThat(text).contains("Plane south", "Plane east", "faces 180", "faces 90");
    assertThat(text).contains("hip", "ridge", "eave", "wide enough for a pathway");
  }

  @Test
  void namesThatMeanHarmAreOnlyWords() throws Exception {
    Document document = drawn(Hostile.review());
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(document.getElementsByTagName("image").getLength()).isZero();
    assertThat(document.getDocumentElement().getTextContent())
        .contains("<script>")
        .doesNotContain("\u202e", "\u001b");
  }

  @Test
  void aReviewWithoutALayoutSaysSo() throws Exception {
    assertThat(drawn(SampleReview.full()).getDocumentElement().getTextContent())
        .contains("Nothing could be drawn of ");
  }

  @Test
  void aJobThatCouldNotBeReadIsNamedBelowThoseThatCould() throws Exception {
    Review one = REVIEWER.review(Path.of("examples/boathouse/job.yaml"));
    Review other = REVIEWER.review(Path.of("examples/missing.yaml"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ReportKind.SVG.write(new Run(List.of(one, other), "0"), out);
    assertThat(out.toString(java.nio.charset.StandardCharsets.UTF_8))
        .contains("Plane south", "Nothing could be drawn of examples/missing.yaml.");
  }

  @Test
  void theSameReviewGivesTheSameBytes() throws Exception {
    Path job = Path.of("examples/barn-junior/job.yaml");
    assertThat(written(new Reviewer().review(job))).isEqualTo(written(REVIEWER.review(job)));
  }
}

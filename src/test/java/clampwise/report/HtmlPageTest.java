package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The page of a review in a real browser: clicks, keys, narrow windows, and no script at all. */
@EnabledIf("clampwise.report.Browser#isHere")
class HtmlPageTest {

  private static final String AXE = "/axe.min.js";

  @TempDir private static Path folder;
  private static Path page;
  private static Browser browser;

  @BeforeAll
  static void write() {
    page = folder.resolve("junior.html");
    write(page, new Reviewer().review(Path.of("examples/barn-junior/job.yaml")));
    browser = Browser.open();
  }

  static void write(Path file, Review review) {
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ReportKind.HTML.write(new Run(List.of(review), "0"), out);
      Files.write(file, out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @AfterAll
  static void close() {
    browser.close();
  }

  @BeforeEach
  void open() {
    browser.sized(1280, 900).load(page);
  }

  private static List<WebElement> shown() {
    return browser.all(".finding:not([hidden])");
  }

  @Test
  void findingsAreFilteredBySeverityTopicPlaceAndWords() {
    int all = shown().size();
    browser.find("input[data-severity=error]").click();
    assertThat(shown()).hasSizeLessThan(all).noneMatch(f -> classes(f).contains("error"));
    assertThat(browser.find(".shown").getText())
        .isEqualTo(shown().size() + " of " + all + " shown");

    browser.find("input[data-severity=error]").click();
    browser.find("select[data-filter=topic] option[value=bonding]").click();
    assertThat(shown())
        .isNotEmpty()
        .allMatch(f -> "bonding".equals(f.getDomAttribute("data-topic")));

    browser.find("select[data-filter=topic] option[value='']").click();
    browser.find("select[data-filter=place] option[value='fields.B']").click();
    assertThat(shown())
        .isNotEmpty()
        .allMatch(f -> "fields.B".equals(f.getDomAttribute("data-place")));

    browser.find("input[data-filter=words]").sendKeys("row gap");
    assertThat(shown()).isNotEmpty().allMatch(f -> text(f).contains("row gap"));
  }

  private static String classes(WebElement element) {
    return String.valueOf(element.getDomAttribute("class"));
  }

  private static String text(WebElement element) {
    return String.valueOf(element.getDomProperty("textContent"));
  }

  @Test
  void aFindingLightsItsMarksOnThePlan() {
    WebElement finding = browser.all(".finding:has(.to-plan)").get(0);
    String number = finding.getDomAttribute("data-number");
    finding.findElement(org.openqa.selenium.By.cssSelector(".to-plan")).click();

    assertThat(browser.all(".plan .lit"))
        .isNotEmpty()
        .allMatch(mark -> number.equals(mark.getDomAttribute("data-finding")));
    assertThat(classes(browser.focused())).contains("canvas");
  }

  @Test
  void aMarkLeadsToItsFinding() {
    WebElement mark = browser.all(".plan .t-white-text[data-finding]").get(0);
    String number = mark.getDomAttribute("data-finding");
    mark.click();

    assertThat(browser.focused().getDomAttribute("id")).isEqualTo("finding-" + number);
  }

  @Test
  void aModuleTellsItsUseAndItsFindings() {
    browser.run(
        "document.querySelector('[data-module=\"B.R3C2\"]')"
            + ".dispatchEvent(new MouseEvent('click', {bubbles: true}))");

    assertThat(browser.find(".module-box").getText())
        .contains("B.R3C2, PV-108-30", "% of its design rating", "Module loaded above its design");
  }

  @Test
  void everythingCanBeReachedByKeys() {
    browser.find("body").sendKeys(Keys.TAB);
    assertThat(browser.focused().getText()).isEqualTo("Skip to the findings");

    WebElement canvas = browser.find(".canvas");
    canvas.sendKeys("+");
    assertThat(browser.run("return document.querySelector('.plan').style.width")).isEqualTo("150%");
    canvas.sendKeys("-");
    assertThat(browser.run("return document.querySelector('.plan').style.width")).isEqualTo("");

    WebElement box = browser.find("input[data-severity=note]");
    box.sendKeys(Keys.SPACE);
    assertThat(shown()).noneMatch(finding -> classes(finding).contains("note"));
  }

  @Test
  void layersCanBeHidden() {
    browser.find("input[data-layer=bonding]").click();
    assertThat(browser.find(".layer-bonding").isDisplayed()).isFalse();
  }

  @Test
  void withoutScriptEverythingIsThereToRead() {
    try (Browser plain = Browser.withoutScript()) {
      plain.load(page);
      assertThat(plain.all(".needs-script")).noneMatch(WebElement::isDisplayed);
      assertThat(plain.all(".finding")).hasSameSizeAs(browser.all(".finding"));
      assertThat(plain.all(".finding")).allMatch(WebElement::isDisplayed);
      assertThat(plain.find(".plan").isDisplayed()).isTrue();
    }
  }

  @Test
  void itPrintsItsCalculations() {
    String pdf = browser.printed();
    assertThat(java.util.Base64.getDecoder().decode(pdf))
        .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
    browser.run("window.dispatchEvent(new Event('beforeprint'))");
    assertThat(browser.all("details.work:not([open])")).isEmpty();
    browser.run("window.dispatchEvent(new Event('afterprint'))");
    assertThat(browser.all("details.work[open]")).isEmpty();
  }

  @Test
  void nothingIsWiderThanATelephone() {
    browser.sized(400, 800);
    assertThat(browser.run("return document.documentElement.scrollWidth <= window.innerWidth"))
        .isEqualTo(true);
  }

  @Test
  void namesThatMeanHarmDoNothing() {
    Path hostile = folder.resolve("hostile.html");
    write(hostile, Hostile.review());
    browser.load(hostile);
    assertThat(browser.run("return window.hacked === undefined")).isEqualTo(true);
    assertThat(browser.all("script")).hasSize(1);
    assertThat(browser.all("img")).isEmpty();
    assertThat(browser.find("h1").getText()).contains("</td><script>").contains("\\u{202e}");
    assertThat(browser.run("return document.documentElement.scrollWidth <= window.innerWidth"))
        .isEqualTo(true);
    for (WebElement mark : browser.all(".plan [data-finding]").subList(0, 1)) {
      browser.run("arguments[0].dispatchEvent(new MouseEvent('click', {bubbles: true}))", mark);
    }
    browser.all(".finding .to-plan").get(0).click();
    assertThat(browser.run("return window.hacked === undefined")).isEqualTo(true);
  }

  @Test
  void nothingIsLoaded() {
    assertThat(browser.run("return performance.getEntriesByType('resource').length")).isEqualTo(0L);
  }

  /** axe-core, the checker of the npm registry, in light and in dark. */
  @Test
  void itIsOpenToEverybody() throws IOException {
    assertThat(serious(browser)).isEmpty();
    try (Browser dark = Browser.open("--force-dark-mode")) {
      dark.load(page);
      assertThat(dark.run("return matchMedia('(prefers-color-scheme: dark)').matches"))
          .isEqualTo(true);
      assertThat(serious(dark)).isEmpty();
    }
  }

  private static List<?> serious(Browser looked) throws IOException {
    try (InputStream in = HtmlPageTest.class.getResourceAsStream(AXE)) {
      looked.run(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        looked.runLong(
            "const done = arguments[arguments.length - 1];"
                + "document.querySelectorAll('details').forEach(d => d.open = true);"
                + "axe.run().then(r => done(r.violations.map(v => ({impact: v.impact, id: v.id,"
                + " nodes: v.nodes.slice(0, 3).map(n => n.html.slice(0, 200))}))))");
    return ((List<?>) found)
        .stream()
            .filter(v -> List.of("serious", "critical").contains(((Map<?, ?>) v).get("impact")))
            .toList();
  }
}

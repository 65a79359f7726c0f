package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.finding.Finding;
import clampwise.review.Cautions;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.autolink.AutolinkExtension;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;

/** Markdown as commonmark-java reads it, with tables and with links that need no marks. */
class MarkdownReportTest {

  /** The only markup of HTML that a summary has. */
  private static final String FOLD = "<details>\\s<summary>[A-Za-z:, ]+</summary>|</details>";

  private static final List<Extension> EXTENSIONS =
      List.of(TablesExtension.create(), AutolinkExtension.create());

  private static String markdown(Run run) {
    return Snapshot.text(ReportKind.MARKDOWN, run);
  }

  private static Node read(String markdown) {
    return Parser.builder().extensions(EXTENSIONS).build().parse(markdown);
  }

  private static Run junior() {
    return new Run(
        List.of(new Reviewer().review(Path.of("examples/barn-junior/job.yaml"))), "0.1.0", 1);
  }

  /** What of a text is markup that a job could have brought. */
  private static final class Found extends AbstractVisitor {
    private final List<String> html = new ArrayList<>();
    private final List<Node> others = new ArrayList<>();
    private int rows;

    @Override
    public void visit(HtmlBlock block) {
      html.add(block.getLiteral());
    }

    @Override
    public void visit(HtmlInline inline) {
      others.add(inline);
    }

    @Override
    public void visit(Link link) {
      others.add(link);
    }

    @Override
    public void visit(Image image) {
      others.add(image);
    }

    @Override
    public void visit(Code code) {
      others.add(code);
    }

    @Override
    public void visit(FencedCodeBlock code) {
      others.add(code);
    }

    @Override
    public void visit(IndentedCodeBlock code) {
      others.add(code);
    }

    @Override
    public void visit(CustomNode node) {
      rows += node instanceof TableRow ? 1 : 0;
      visitChildren(node);
    }
  }

  private static Found found(String markdown) {
    Found found = new Found();
    read(markdown).accept(found);
    return found;
  }

  @Test
  void everyFindingThatStandsOnItsOwnIsARowUnderItsNumber() {
    Run run = junior();
    long leading = run.reviews().get(0).findings().stream().filter(Finding::leads).count();
    String markdown = markdown(run);

    assertThat(found(markdown).rows).isEqualTo((int) leading + 1);
    assertThat(markdown)
        .contains("### Fix first", "| 1 | error |", "| " + leading + " | ", "not a pass")
        .contains(Cautions.NO_APPROVAL)
        .doesNotContain("left out for room");
  }

  @Test
  void noMarkupOfAJobComesThrough() {
    for (String text : HostileReview.TEXTS) {
      Run run = new Run(List.of(HostileReview.saying(text)), "0.1.0", 2);
      Found found = found(markdown(run));
      assertThat(found.others).as(text).isEmpty();
      assertThat(found.html).as(text).allMatch(html -> html.matches(FOLD));
      assertThat(found.rows).as(text).isEqualTo(3);
    }
  }

  @Test
  void noMarkupOfAReviewedJobComesThrough() {
    Found found = found(markdown(new Run(List.of(Hostile.review()), "0.1.0", 1)));
    assertThat(found.others).isEmpty();
    assertThat(found.html).hasSize(6).allMatch(html -> html.matches(FOLD));
    assertThat(found.rows).isGreaterThan(30);
  }

  @Test
  void nothingHiddenCallsAPersonOrReordersALine() {
    String markdown = markdown(HostileReview.run());
    assertThat(markdown)
        .doesNotContain("@everyone", "#12", "!7", "%3", "://", "\u202e", "\u001b")
        .contains("@\u2060everyone");
    assertThat(Harmless.of(markdown.replace("\u2060", "").replace("\n", "")))
        .isEqualTo(markdown.replace("\u2060", "").replace("\n", ""));
  }

  @Test
  void whatIsReadIsWhatTheJobSays() {
    String text = "a_b*c [d] <e> `f` |g| ~h~ \\ #i 5 % & 4:12";
    Node page = read(markdown(new Run(List.of(SampleReview.saying(text)), "0.1.0")));
    String shown = TextContentRenderer.builder().extensions(EXTENSIONS).build().render(page);
    assertThat(shown.replace("\u2060", "")).contains("why: " + text);
  }

  private static int rows(String markdown, String severity) {
    return markdown.split("\\| " + severity + " \\|", -1).length - 1;
  }

  @Test
  void aLongRunLeavesOutWholeFindingsOfTheLeastWeightAndSaysSo() {
    Review junior = junior().reviews().get(0);
    int[] one = {rows(markdown(junior()), "error"), rows(markdown(junior()), "warning")};
    boolean cutAmongErrors = false;
    for (int jobs = 2; jobs <= 14; jobs += 2) {
      String markdown = markdown(new Run(Collections.nCopies(jobs, junior), "0.1.0", 1));
      boolean errors = rows(markdown, "error") < jobs * one[0];
      boolean warnings = rows(markdown, "warning") < jobs * one[1];

      assertThat(markdown.length()).isLessThanOrEqualTo(MarkdownReport.MOST);
      assertThat(errors && rows(markdown, "warning") > 0).isFalse();
      assertThat(warnings && rows(markdown, "note") > 0).isFalse();
      assertThat(warnings && markdown.contains("**1. ")).isFalse();
      assertThat(markdown.contains("left out for room")).isTrue();
      assertThat(markdown).contains(Cautions.NO_APPROVAL);
      assertThat(found(markdown).others).isEmpty();
      cutAmongErrors |= errors;
    }
    assertThat(cutAmongErrors).isTrue();
  }

  @Test
  void soManyJobsThatNotEvenTheirHeadsHaveRoomAreCounted() {
    Run run = new Run(Collections.nCopies(500, SampleReview.full()), "0.1.0", 1);
    String markdown = markdown(run);
    assertThat(markdown.length()).isBetween(20_000, MarkdownReport.MOST);
    assertThat(markdown).contains("jobs left out for room");
  }

  @Test
  void aRunOfWhichNothingIsLeftOutEndsWithItsCautions() {
    assertThat(markdown(new Run(List.of(), "0.1.0", 70)))
        .contains("a job was not reviewed", Cautions.NO_APPROVAL);
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    assertThat(markdown(junior())).isEqualTo(markdown(junior()));
  }

  @Test
  void theSampleIsWrittenAsItWasLookedAt() throws IOException {
    Snapshot.check("sample.md", markdown(Snapshot.sample()));
  }
}

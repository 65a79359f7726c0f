package clampwise.report;

import clampwise.rulebook.RulePage;
import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Rule pages as HTML: without their title and examples, and without links, which lead nowhere. */
final class PageMarkup {

  private static final int BELOW = 2;
  private static final int LEAST = 4;

  private PageMarkup() {}

  static String of(RulePage page) {
    List<TablesExtension> tables = List.of((TablesExtension) TablesExtension.create());
    Node document = Parser.builder().extensions(tables).build().parse(withoutExamples(page.text()));
    document.accept(new Plainer());
    return HtmlRenderer.builder().extensions(tables).escapeHtml(true).build().render(document);
  }

  /** The title is that of the finding; the examples are for those who change rules. */
  private static String withoutExamples(String page) {
    StringBuilder kept = new StringBuilder();
    boolean skipped = false;
    boolean fenced = false;
    for (String line : page.lines().toList()) {
      fenced ^= line.startsWith("```");
      if (!fenced && line.startsWith("## ")) {
        skipped = line.equals("## Examples");
      }
      if (!skipped && !line.startsWith("# ")) {
        kept.append(line).append('\n');
      }
    }
    return kept.toString();
  }

  /** Headings stand below that of the finding; of a link only its words stay. */
  private static final class Plainer extends AbstractVisitor {

    @Override
    public void visit(Heading heading) {
      heading.setLevel(Math.max(LEAST, Math.min(6, heading.getLevel() + BELOW)));
      visitChildren(heading);
    }

    @Override
    public void visit(Link link) {
      for (Node child = link.getFirstChild(); child != null; child = link.getFirstChild()) {
        link.insertBefore(child);
      }
      link.unlink();
    }
  }
}

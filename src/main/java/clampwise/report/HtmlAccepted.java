package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import java.io.IOException;
import java.util.List;

/** Findings that somebody answers for, on the page and on paper. */
final class HtmlAccepted {

  private final Html html;

  HtmlAccepted(Html html) {
    this.html = html;
  }

  /**
   * Writes the section, if there is anything in it.
   *
   * @param id what the section is called in links
   */
  void write(List<Accepted> accepted, String id) throws IOException {
    if (accepted.isEmpty()) {
      return;
    }
    html.open("section", "class", "accepted", "id", id);
    html.element("h2", AcceptedWords.TITLE + " (" + accepted.size() + ")");
    html.element("p", AcceptedWords.MEANING).open("ul");
    for (Accepted one : accepted) {
      Finding finding = one.finding();
      html.open("li");
      html.element("b", finding.severity().word() + ": " + finding.title());
      html.element("div", finding.message() + " (" + finding.rule() + ", " + finding.at() + ")");
      html.element("div", one.words());
      html.element("code", one.at().toString(), "class", "place");
      html.close();
    }
    html.close().close();
  }
}

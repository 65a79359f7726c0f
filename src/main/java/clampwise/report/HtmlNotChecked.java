package clampwise.report;

import clampwise.review.Review;
import java.io.IOException;
import java.util.List;

/** What of a job could not be judged, and why. */
final class HtmlNotChecked {

  private final Html html;

  HtmlNotChecked(Html html) {
    this.html = html;
  }

  void write(Review review) throws IOException {
    List<NotCheckedGroup> groups = NotCheckedGroup.of(review.notChecked());
    html.open("section", "class", "not-checked");
    html.element("h2", "Not checked (" + Counted.of(groups.size(), "reason") + ")");
    if (groups.isEmpty()) {
      html.element("p", "Every rule that looks at this job could judge it.").close();
      return;
    }
    html.element("p", "What is missing here is not a pass.").open("ul");
    for (NotCheckedGroup group : groups) {
      html.open("li").text(group.reason() + " ");
      html.element("code", group.at().toString(), "class", "place");
      html.open("details").element("summary", Counted.of(group.rules().size(), "rule"));
      html.element("p", String.join(", ", group.rules())).close();
      html.close();
    }
    html.close().close();
  }
}

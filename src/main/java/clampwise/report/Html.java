package clampwise.report;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;

/** A page of HTML under way: elements open and close in order, and every text is harmless. */
final class Html {

  private final Appendable out;
  private final Deque<String> open = new ArrayDeque<>();

  Html(Appendable out) {
    this.out = out;
  }

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   */
  Html open(String element, String... attributes) throws IOException {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]);
      out.append("=\"").append(Markup.of(attributes[i + 1])).append('"');
    }
    out.append('>');
    open.push(element);
    return this;
  }

  Html text(String text) throws IOException {
    out.append(Markup.of(text));
    return this;
  }

  /** Closes the element that was opened last. */
  Html close() throws IOException {
    out.append("</").append(open.pop()).append(">\n");
    return this;
  }

  /** A whole element with a text in it. */
  Html element(String element, String text, String... attributes) throws IOException {
    return open(element, attributes).text(text).close();
  }

  /** What is markup already and was made by this program. */
  Html markup(String markup) throws IOException {
    out.append(markup);
    return this;
  }

  /** Where markup that this program makes is written. */
  Appendable out() {
    return out;
  }
}

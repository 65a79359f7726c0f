package clampwise.report;

/** Texts of a job in XML and HTML: harmless characters only, and none that would be markup. */
final class Markup {

  private Markup() {}

  /** The text for content and for attributes between quotation marks. */
  static String of(String text) {
    String harmless = Harmless.of(text);
    StringBuilder out = new StringBuilder(harmless.length());
    for (int i = 0; i < harmless.length(); i++) {
      char c = harmless.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        case '\'' -> out.append("&#39;");
        default -> out.append(c);
      }
    }
    return out.toString();
  }
}

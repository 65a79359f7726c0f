package clampwise.report;

import clampwise.finding.Finding;
import clampwise.gate.Changes;
import clampwise.gate.Changes.Changed;
import java.util.List;
import java.util.function.UnaryOperator;

/** What became of a job from one revision to another, as a comment on a merge request. */
public final class ChangesMarkdown {

  private static final int MOST_OF_LINE = 400;

  private ChangesMarkdown() {}

  /** A job of which there is but one side. */
  public static String note(String title, String text) {
    return "### "
        + MarkdownWords.of(title, MOST_OF_LINE)
        + "\n\n"
        + (text.isEmpty() ? "" : MarkdownWords.of(text, MOST_OF_LINE) + "\n\n");
  }

  /**
   * All that changed in a job.
   *
   * @param place how a place is named, where files were read from a revision
   */
  public static String of(String title, Changes changes, UnaryOperator<String> place) {
    StringBuilder out = new StringBuilder();
    out.append("### Changes of ").append(MarkdownWords.of(title, MOST_OF_LINE)).append("\n\n");
    out.append("**").append(ChangesText.counts(changes)).append("**\n\n");
    for (String line : changes.layout()) {
      out.append("- ").append(MarkdownWords.of(line, MOST_OF_LINE)).append('\n');
    }
    out.append(changes.layout().isEmpty() ? "" : "\n");
    list(out, "New", changes.fresh(), place);
    list(out, "Worse", changes.worse(), place);
    list(out, "Better", changes.better(), place);
    list(out, "Gone", changes.gone(), place);
    list(out, "Not checked any more (that is not gone)", changes.unknown(), place);
    return out.toString();
  }

  private static void list(
      StringBuilder out, String title, List<Changed> findings, UnaryOperator<String> place) {
    if (findings.isEmpty()) {
      return;
    }
    out.append("**").append(title).append("**\n\n");
    for (Changed one : findings) {
      Finding finding = one.finding();
      String was = one.before().map(old -> "; " + ChangesText.from(old, finding)).orElse("");
      String accepted = one.accepted() ? " (somebody answers for it)" : "";
      String text =
          finding.severity().word()
              + accepted
              + ": "
              + finding.message()
              + was
              + " ("
              + finding.rule()
              + ", "
              + place.apply(finding.at().toString())
              + ")";
      out.append("- ").append(MarkdownWords.of(text, MOST_OF_LINE)).append('\n');
    }
    out.append('\n');
  }
}

package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Term;
import clampwise.facts.loads.CalcSheet.Part;
import clampwise.review.Cautions;
import clampwise.review.Review;
import java.util.List;

/** The calculation sheet of a job as Markdown: every line with its formula, values and source. */
public final class CalcSheetMarkdown {

  private final StringBuilder out = new StringBuilder();
  private final Citations citations = Citations.packed();

  private CalcSheetMarkdown() {}

  /** The sheets of all reviews of a run. */
  public static String of(List<Review> reviews) {
    CalcSheetMarkdown page = new CalcSheetMarkdown();
    reviews.forEach(page::review);
    page.line(Cautions.NO_APPROVAL_BY_NUMBERS);
    return page.out.toString();
  }

  private void review(Review review) {
    heading(1, "Calculation sheet: " + Harmless.markdown(TextReport.title(review)));
    line("Job file: " + Harmless.markdown(review.file()));
    line("");
    line(
        "Of each field and wind zone: the attachment and the module that use most of their strength; then"
            + " the column, the clip and the fixed point that do.");
    line("A value in a line is worked out from the values beside it, in the units printed.");
    line("");
    List<Part> parts = review.sheet().parts();
    if (parts.isEmpty()) {
      line("Nothing could be calculated; the review says what is missing.");
      line("");
    }
    parts.forEach(this::part);
  }

  private void part(Part part) {
    String zone = part.zone().isEmpty() ? "" : ", zone " + part.zone();
    String field = part.field().isEmpty() ? "" : "Field " + part.field() + zone + ": ";
    heading(2, field + Harmless.markdown(part.title()));
    part.sections().forEach(this::section);
  }

  private void section(Section section) {
    heading(3, Harmless.markdown(section.title()));
    int number = 0;
    for (Line each : section.lines()) {
      number++;
      entry(number, each, section.measure());
    }
    line("");
  }

  private void entry(int number, Line entry, Measure measure) {
    String equation = entry.formula().isEmpty() ? "" : " = " + entry.formula();
    Term result = entry.result();
    line(number + ". " + Harmless.markdown(result.meaning()) + ":");
    line("   `" + result.symbol() + equation + " = " + WorkDigits.text(result, measure) + "`");
    if (!entry.inputs().isEmpty()) {
      List<String> inputs =
          entry.inputs().stream()
              .map(input -> "`" + input.symbol() + " = " + WorkDigits.text(input, measure) + "`")
              .toList();
      line("   with " + String.join(", ", inputs));
    }
    line("   " + WorkText.basis(entry.source(), citations));
    if (!entry.note().isEmpty()) {
      line("   *" + Harmless.markdown(entry.note()) + "*");
    }
  }

  private void heading(int level, String text) {
    line("#".repeat(level) + " " + text);
    line("");
  }

  private void line(String text) {
    out.append(text).append('\n');
  }
}

package clampwise.report;

import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calculation.Calculation;
import clampwise.calculation.Input;
import clampwise.calculation.InputText;
import clampwise.calculation.Reading;
import clampwise.review.Cautions;
import java.util.List;

/** Public calculations as text: the list of all, what one asks for, and its shown work. */
public final class CalculationText {

  private static final int INDENT = 2;
  private static final int BELOW = 6;

  private final Sheet sheet;

  /** Writes onto a page. */
  public CalculationText(Sheet sheet) {
    this.sheet = sheet;
  }

  /** Every calculation with its title. */
  public void list(List<Calculation> all) {
    for (Calculation calculation : all) {
      sheet.whole(INDENT, Role.PLACE, calculation.name());
      sheet.prose(BELOW, Role.PLAIN, calculation.title());
    }
    sheet.gap();
    sheet.prose(0, Role.PLAIN, "clampwise calc NAME says what a calculation asks for.");
  }

  /** What a calculation asks for. */
  public void inputs(Calculation calculation) {
    heading(calculation);
    section("Inputs");
    for (Input input : calculation.inputs()) {
      sheet.whole(INDENT, Role.PLACE, input.name());
      sheet.prose(BELOW, Role.PLAIN, input.meaning());
      sheet.prose(BELOW, Role.FAINT, InputText.expected(input) + unset(input));
    }
    sheet.gap();
    sheet.prose(0, Role.PLAIN, "clampwise calc " + calculation.name() + " KEY=VALUE... runs it.");
  }

  private static String unset(Input input) {
    return input
        .unset()
        .map(text -> text.isEmpty() ? "; may be left out" : "; " + text + " if left out")
        .orElse("");
  }

  /** A calculation that was run. */
  public void work(Calculation calculation, Reading reading, Work work, List<Term> results) {
    heading(calculation);
    section("Given");
    reading.texts().forEach(this::given);
    section(work.measure() == Measure.METRIC ? "Work, metric units" : "Work, imperial units");
    new WorkText(sheet, work.measure()).write(work.lines());
    section(results.size() == 1 ? "Result" : "Results");
    for (Term result : results) {
      String value = WorkDigits.spoken(result, work.measure());
      sheet.marked(INDENT, "", Role.PLAIN, result.meaning() + ":");
      sheet.prose(BELOW, Role.HEADING, result.symbol() + " = " + value);
    }
    sheet.gap();
    sheet.prose(0, Role.FAINT, Cautions.NO_APPROVAL_BY_NUMBERS);
  }

  private void given(Reading.Text text) {
    String left = text.written() ? "" : " (not given)";
    sheet.prose(INDENT, Role.PLAIN, text.input().name() + " = " + text.text() + left);
  }

  private void heading(Calculation calculation) {
    sheet.prose(0, Role.HEADING, calculation.name());
    sheet.prose(INDENT, Role.PLAIN, calculation.title());
    sheet.prose(INDENT, Role.FAINT, "holds for: " + calculation.validity());
  }

  private void section(String title) {
    sheet.gap();
    sheet.prose(0, Role.HEADING, title);
  }
}

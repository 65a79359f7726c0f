package clampwise.report;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.finding.Basis;
import java.util.ArrayList;
import java.util.List;

/**
 * Shown work as text: what each number is, its formula, the values put in, the result, its source.
 */
public final class WorkText {

  private static final int INDENT = 2;

  private final Sheet sheet;
  private final Measure measure;
  private final Citations citations = Citations.packed();

  /** Writes onto a page, in these units. */
  public WorkText(Sheet sheet, Measure measure) {
    this.sheet = sheet;
    this.measure = measure;
  }

  /** Every line, numbered. */
  public void write(List<Line> lines) {
    int number = 0;
    for (Line line : lines) {
      number++;
      sheet.gap();
      String mark = (number + ".   ").substring(0, Math.max(4, (number + ". ").length()));
      sheet.marked(INDENT, mark, Role.PLAIN, line.result().meaning());
      line(INDENT + mark.length(), line);
    }
  }

  private void line(int indent, Line line) {
    String symbol = line.result().symbol();
    String value = WorkDigits.spoken(line.result(), measure);
    if (line.formula().isEmpty()) {
      sheet.prose(indent, Role.HEADING, symbol + " = " + value);
    } else {
      sheet.prose(indent, Role.PLAIN, symbol + " = " + breakable(line.formula()));
      sheet.prose(indent + symbol.length() + 1, Role.HEADING, "= " + value);
      sheet.labelled(indent, "with", with(line.inputs()));
    }
    sheet.labelled(indent, "basis", basis(line.source(), citations));
    sheet.labelled(indent, "note", line.note());
  }

  /** Blanks round the signs, where a long formula may be broken. */
  static String breakable(String formula) {
    StringBuilder broken = new StringBuilder();
    for (int i = 0; i < formula.length(); i++) {
      char sign = formula.charAt(i);
      boolean between = sign == '+' || sign == '-' && i > 0 && endsTerm(formula.charAt(i - 1));
      broken.append(between ? " " + sign + " " : sign);
    }
    return broken.toString();
  }

  private static boolean endsTerm(char last) {
    return last == ')' || last == '_' || last < 128 && Character.isLetterOrDigit(last);
  }

  /** A line as one equation with its value. */
  static String equation(Line line, Measure measure) {
    return line.result().symbol()
        + " = "
        + breakable(line.formula())
        + " = "
        + WorkDigits.text(line.result(), measure);
  }

  private String with(List<Term> inputs) {
    List<String> texts = new ArrayList<>();
    for (Term input : inputs) {
      texts.add(input.symbol() + " = " + WorkDigits.text(input, measure));
    }
    return String.join(", ", texts);
  }

  /** Document, edition, clause and how it was obtained. */
  static String basis(Source source, Citations citations) {
    Basis basis =
        new Basis(source.document(), source.edition(), source.clause(), source.obtained(), "");
    StringBuilder text = new StringBuilder(citations.document(basis));
    append(text, ", ", source.clause());
    if (!text.toString().endsWith(source.obtained())) {
      text.append(" (").append(source.obtained()).append(')');
    }
    return text.toString();
  }

  private static void append(StringBuilder text, String before, String part) {
    if (!part.isEmpty()) {
      text.append(before).append(part);
    }
  }
}

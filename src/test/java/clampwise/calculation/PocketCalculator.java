package clampwise.calculation;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import com.ezylang.evalex.EvaluationException;
import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.ExpressionConfiguration;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.AbstractFunction;
import com.ezylang.evalex.functions.FunctionParameter;
import com.ezylang.evalex.parser.ParseException;
import com.ezylang.evalex.parser.Token;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works out the formula of a line from its printed inputs, as a reader would key it in. */
public final class PocketCalculator {

  /** As many digits as a printed value has at least. */
  private static final MathContext PRINTED = new MathContext(6);

  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z0-9_]*");

  private static final ExpressionConfiguration FUNCTIONS =
      ExpressionConfiguration.defaultConfiguration()
          .withAdditionalFunctions(
              Map.entry("LN", new OneArgument(Math::log)),
              Map.entry("EXP", new OneArgument(Math::exp)));

  private final Line line;
  private final List<String> symbols;
  private final Expression expression;

  /** A calculator for one line. */
  public PocketCalculator(Line line) {
    this.line = line;
    this.symbols = line.inputs().stream().map(Term::symbol).toList();
    this.expression = new Expression(numbered(line.formula()), FUNCTIONS);
  }

  /** What the formula gives for the inputs as printed in a measure. */
  public double value(Measure measure) {
    return value(printed(measure));
  }

  /** How far that may be from the printed result, because inputs and result are rounded. */
  public double rounding(Measure measure) {
    double[] inputs = printed(measure);
    double middle = value(inputs);
    double sum = halfStep(measure.value(line.result()));
    for (int i = 0; i < inputs.length; i++) {
      double[] up = inputs.clone();
      double[] down = inputs.clone();
      up[i] += halfStep(inputs[i]);
      down[i] -= halfStep(inputs[i]);
      sum += Math.max(Math.abs(value(up) - middle), Math.abs(value(down) - middle));
    }
    return 1.01 * sum + 1e-12;
  }

  static double printed(double value) {
    return new BigDecimal(value).round(PRINTED).doubleValue();
  }

  private static double halfStep(double value) {
    double size = Math.max(Math.abs(value), Double.MIN_NORMAL);
    return Math.pow(10, Math.floor(Math.log10(size)) + 1 - PRINTED.getPrecision()) / 2;
  }

  private double[] printed(Measure measure) {
    return line.inputs().stream().mapToDouble(t -> printed(measure.value(t))).toArray();
  }

  private double value(double[] inputs) {
    try {
      for (int i = 0; i < inputs.length; i++) {
        expression.with("v" + i, BigDecimal.valueOf(inputs[i]));
      }
      return expression.evaluate().getNumberValue().doubleValue();
    } catch (EvaluationException | ParseException e) {
      throw new AssertionError("unreadable formula " + line.formula() + ": " + e.getMessage(), e);
    }
  }

  /** Symbols differ by case, which the evaluator ignores; numbered ones do not. */
  private String numbered(String formula) {
    Matcher words = WORD.matcher(formula);
    StringBuilder numbered = new StringBuilder();
    while (words.find()) {
      words.appendReplacement(numbered, numberedWord(formula, words));
    }
    return words.appendTail(numbered).toString();
  }

  private String numberedWord(String formula, Matcher word) {
    int index = symbols.indexOf(word.group());
    boolean function = word.end() < formula.length() && formula.charAt(word.end()) == '(';
    if (index < 0 && !function) {
      throw new AssertionError("formula " + formula + " has no input " + word.group());
    }
    return function ? word.group() : "v" + index;
  }

  /** Inputs that the formula does not use. */
  public List<String> unused() {
    List<String> unused = new ArrayList<>(symbols);
    Matcher words = WORD.matcher(line.formula());
    while (words.find()) {
      unused.remove(words.group());
    }
    return unused;
  }

  @FunctionParameter(name = "value")
  private static final class OneArgument extends AbstractFunction {

    private final DoubleUnaryOperator function;

    OneArgument(DoubleUnaryOperator function) {
      this.function = function;
    }

    @Override
    public EvaluationValue evaluate(Expression at, Token token, EvaluationValue... values) {
      return at.convertValue(function.applyAsDouble(values[0].getNumberValue().doubleValue()));
    }
  }
}

package clampwise.calc.combination;

import clampwise.calc.trail.Formulas;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Writes combinations as lines of shown work.
 *
 * @param actions the actions
 * @param dimension what their effects are: pressures or forces
 * @param work takes the lines
 */
public record CombinationWork(Actions actions, Dimension dimension, Work work) {

  /** Writes the combinations that govern: uplift, pressure, down the slope. */
  public void write(Governing governing) {
    write(governing.up(), Part.UP);
    write(governing.down(), Part.DOWN);
    write(governing.along(), Part.ALONG);
  }

  /** Writes one result of a combination and gives it [SI]. */
  public double write(Combined combined, Part part) {
    List<String> products = new ArrayList<>();
    List<Term> inputs = new ArrayList<>();
    Combination.Factors factors = combined.combination().factors();
    add(products, inputs, factors.dead(), new Action("D", "dead load", actions.dead(), part));
    add(products, inputs, factors.live(), new Action("L", "live load", actions.live(), part));
    add(
        products,
        inputs,
        factors.roofLive(),
        new Action("Lr", "roof live load", actions.roofLive(), part));
    add(products, inputs, factors.snow(), new Action("S", "snow", actions.snow(), part));
    add(products, inputs, factors.rain(), new Action("R", "rain", actions.rain(), part));
    add(products, inputs, factors.wind(), new Action("W", "wind", wind(part), part));
    Term result =
        new Term(part.symbol, part.meaning, part.result.applyAsDouble(combined), dimension);
    String formula = String.join("+", products);
    return work.write(
        new Line(result, formula, inputs, combined.combination().source(), combined.name()));
  }

  /** A direction in which a combination acts. */
  public enum Part {
    UP("q_up", "least across the surface", Combined::normalUp),
    DOWN("q_down", "most across the surface", Combined::normalDown),
    ALONG("q_along", "down the slope", Combined::alongSlope);

    private final String symbol;
    private final String meaning;
    private final ToDoubleFunction<Combined> result;

    Part(String symbol, String meaning, ToDoubleFunction<Combined> result) {
      this.symbol = symbol;
      this.meaning = meaning;
      this.result = result;
    }
  }

  private record Action(String symbol, String meaning, Effect effect, Part part) {

    Term term(Dimension dimension) {
      boolean isAlong = part == Part.ALONG;
      return new Term(
          symbol + (isAlong ? "_s" : "_n"),
          meaning + (isAlong ? ", down the slope" : ", across the surface"),
          isAlong ? effect.along() : effect.normal(),
          dimension);
    }
  }

  private Effect wind(Part part) {
    return part == Part.DOWN ? actions.windDown() : actions.windUp();
  }

  private void add(List<String> products, List<Term> inputs, double factor, Action action) {
    if (factor == 0) {
      return;
    }
    Term term = action.term(dimension);
    products.add((factor == 1 ? "" : Formulas.number(factor) + "*") + term.symbol());
    inputs.add(term);
  }
}

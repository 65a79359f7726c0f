package clampwise.calculation;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * A public calculation: {@code clampwise calc NAME key=value} runs it.
 *
 * @param name its name, kebab-case
 * @param title what it gives, in one line
 * @param validity where it holds
 * @param inputs what it asks for
 * @param body the calculation
 */
public record Calculation(
    String name, String title, String validity, List<Input> inputs, Body body) {

  /** Runs a calculation, writes its lines into the work and gives its results. */
  @FunctionalInterface
  public interface Body {
    Outcome<List<Term>> run(Given given, Work work);
  }
}

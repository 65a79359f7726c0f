package clampwise.calc.statics;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;

/**
 * Whether the weight of an array calls for a check of the roof's members.
 *
 * @param deadPa roof's own dead load [Pa]
 * @param livePa roof live load or snow that the members were designed for [Pa]
 * @param addedPa dead load of the array [Pa]
 */
public record DeadLoadScreen(double deadPa, double livePa, double addedPa) {

  /** Share by which the array raises the gravity load. */
  public double increase() {
    return addedPa / (deadPa + livePa);
  }

  /**
   * The increase over the gravity load so far, g/(D + L), and the load left where live load is
   * dropped under the array.
   *
   * <p>Screen of existing buildings; holds where members carry area in proportion. It clears or
   * asks for a check; it never replaces one.
   *
   * @param most greatest increase without a check, with its source
   * @return the increase
   */
  public Term show(Term most, Source source, Work work) {
    Term dead = Term.pressure("D", "roof's own dead load", deadPa);
    Term live = Term.pressure("L", "live load or snow of the design", livePa);
    Term added = Term.pressure("D_a", "dead load of the array", addedPa);
    Term increase = Term.number("i", "increase of the gravity load", increase());
    work.given(most, source);
    String verdict =
        increase() > most.si()
            ? "Above the screen: the members need a check."
            : "Within the screen.";
    work.write(new Line(increase, "D_a/(D+L)", List.of(added, dead, live), source, verdict));
    Term left = Term.pressure("D_1", "dead load with the array", deadPa + addedPa);
    work.write(
        new Line(
            left,
            "D+D_a",
            List.of(dead, added),
            Source.STATICS,
            "What remains, with snow, where live load may be left out under the array;"
                + " the roof must still pass without the array."));
    return increase;
  }
}

package clampwise.units;

/** What became of a text that should be a quantity. */
public sealed interface Parsed {

  /**
   * A quantity that was understood.
   *
   * @param si its value in SI; a gauge number stays the number
   * @param unit the unit it was written in
   */
  record Value(double si, Unit unit) implements Parsed {}

  /**
   * A text that is no such quantity.
   *
   * @param found what stands there, in plain words
   * @param expected what would be right, with an example
   */
  record Fault(String found, String expected) implements Parsed {}
}

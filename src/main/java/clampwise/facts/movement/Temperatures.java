package clampwise.facts.movement;

import clampwise.job.Quantity.Temperature;
import clampwise.units.QuantityPrint;

/** Temperatures in words. */
final class Temperatures {

  private Temperatures() {}

  static String between(Temperature cold, Temperature hot) {
    return "between " + text(cold) + " and " + text(hot);
  }

  private static String text(Temperature temperature) {
    return QuantityPrint.text(temperature.si(), temperature.unit());
  }
}

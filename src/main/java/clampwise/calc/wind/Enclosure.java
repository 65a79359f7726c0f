package clampwise.calc.wind;

import java.util.Locale;

/** Enclosure of a building, which sets its internal pressure. */
public enum Enclosure {
  ENCLOSED,
  PARTIALLY_OPEN,
  PARTIALLY_ENCLOSED,
  OPEN;

  /** The word in tables and inputs, such as {@code partially-enclosed}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}

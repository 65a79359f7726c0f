package clampwise.calc.combination;

import clampwise.calc.trail.Formulas;
import java.util.ArrayList;
import java.util.List;

/** Writes combinations as the trade does. */
final class CombinationName {

  private CombinationName() {}

  static String asce(Combination.Factors factors) {
    return name(factors, "D", "Lr");
  }

  static String eurocode(Combination.Factors factors) {
    return name(factors, "G", "H");
  }

  private static String name(Combination.Factors factors, String dead, String roofLive) {
    List<String> terms = new ArrayList<>();
    add(terms, factors.dead(), dead);
    add(terms, factors.live(), "L");
    add(terms, factors.roofLive(), roofLive);
    add(terms, factors.snow(), "S");
    add(terms, factors.rain(), "R");
    add(terms, factors.wind(), "W");
    return String.join(" + ", terms);
  }

  private static void add(List<String> terms, double factor, String action) {
    if (factor != 0) {
      terms.add(factor == 1 ? action : Formulas.number(factor) + " " + action);
    }
  }
}

package clampwise.units;

/** How many decimals the trade writes in a unit. */
final class Decimals {

  private Decimals() {}

  static int of(Unit unit) {
    return switch (unit.symbol()) {
      case "Pa", "N", "lbf", "lbf in", "mph", "ga" -> 0;
      case "m" -> 3;
      case "in", "kN", "kPa", "kip", "", "m²", "lbf ft", "ohm", "%/°C" -> 2;
      case "rad" -> 4;
      default -> 1;
    };
  }
}

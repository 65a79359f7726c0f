package clampwise.calc.takeoff;

/**
 * The rails under modules that stand side by side without a break.
 *
 * @param modules how many modules
 * @param modulesM from the left side of the first to the right side of the last [m]
 */
public record RailRun(int modules, double modulesM, RailRules rules) {

  private static final int ENDS = 2;

  /** Length of one rail [m]. */
  public double railM() {
    return modulesM + ENDS * rules.pastModulesM();
  }

  /** Rails. */
  public int rails() {
    return rules.railsPerRow();
  }

  /** Pieces of stock in all rails of the run. */
  public int pieces() {
    return rails() * WholeNumbers.up(railM() / rules.stockM());
  }

  /** Splices between those pieces. */
  public int splices() {
    return pieces() - rails();
  }

  /** Attachments of all rails: at least one at each end. */
  public int attachments() {
    double betweenM = Math.max(0, railM() - ENDS * rules.cantileverM());
    return rails() * Math.max(ENDS, WholeNumbers.up(betweenM / rules.spanM()) + 1);
  }

  /** Clamps between two modules. */
  public int midClamps() {
    return rails() * (modules - 1);
  }

  /** Clamps at the ends of rails. */
  public int endClamps() {
    return rails() * ENDS;
  }
}

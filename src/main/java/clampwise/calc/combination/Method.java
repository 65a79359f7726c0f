package clampwise.calc.combination;

/** How loads and resistances are compared. Effects of the two are never mixed. */
public enum Method {
  /** Allowable stress design: nominal loads against allowables. */
  ASD("asd"),
  /** Strength design: factored loads against design strengths. */
  LRFD("lrfd");

  private final String table;

  Method(String table) {
    this.table = table;
  }

  String table() {
    return table;
  }
}

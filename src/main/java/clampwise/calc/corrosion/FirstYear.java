package clampwise.calc.corrosion;

import clampwise.calc.trail.Table;

/**
 * Loss of the first year in a class of air.
 *
 * @param classes ends of the classes, ISO 9223 table 2
 * @param instead losses to reckon with instead of the middle of a class
 */
public record FirstYear(Table classes, Table instead) {

  /** The loss that is given for the class, else the middle of the class [m]. */
  public double lossM(String metal, String airClass) {
    for (Table.Row row : instead.rows()) {
      if (row.word("metal").equals(metal) && row.word("class").equals(airClass)) {
        return row.number("loss");
      }
    }
    Table.Row row = classes.row("class", airClass).orElseThrow();
    return (row.number(metal + "-least") + row.number(metal + "-most")) / 2;
  }
}

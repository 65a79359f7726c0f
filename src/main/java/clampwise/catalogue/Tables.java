package clampwise.catalogue;

import clampwise.calc.trail.Table;
import java.util.Map;

/** Tables of codes and handbooks by key. */
public record Tables(Map<String, Table> byKey) {

  /** A table that ships with the program. */
  public Table get(String key) {
    Table table = byKey.get(key);
    if (table == null) {
      throw new IllegalArgumentException("no table named " + key);
    }
    return table;
  }
}

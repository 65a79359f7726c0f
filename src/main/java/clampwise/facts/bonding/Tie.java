package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.Comparator;

/** Two frames of a field that a jumper would tie, the left or lower one first. */
record Tie(PlacedModule one, PlacedModule other) implements Comparable<Tie> {

  static final Comparator<PlacedModule> BY_PLACE =
      Comparator.comparingInt(PlacedModule::column).thenComparingInt(PlacedModule::row);
  private static final Comparator<Tie> FROM_THE_LEFT =
      Comparator.comparing(Tie::one, BY_PLACE).thenComparing(Tie::other, BY_PLACE);

  static Tie of(PlacedModule one, PlacedModule other) {
    return BY_PLACE.compare(one, other) <= 0 ? new Tie(one, other) : new Tie(other, one);
  }

  /** Whether another one goes on to the next column in the row where this one ends. */
  boolean leadsTo(Tie next) {
    return other.name().equals(next.one.name()) && isLike(next);
  }

  /** Whether both lie along one row. */
  boolean isLike(Tie next) {
    return one.field().equals(next.one.field())
        && one.row() == other.row()
        && one.row() == next.one.row()
        && next.one.row() == next.other.row();
  }

  /** Columns from this one to another one. */
  int columnsTo(Tie next) {
    return next.one.column() - one.column();
  }

  @Override
  public int compareTo(Tie next) {
    return FROM_THE_LEFT.compare(this, next);
  }

  @Override
  public String toString() {
    return one.name() + " - " + other.name();
  }
}

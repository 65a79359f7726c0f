package clampwise.rulebook;

import clampwise.units.Dimension;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.List;

/** What the ending of a number's name says of its unit. */
final class Suffix {
  private record Ending(String text, Unit unit) {
    boolean ends(String name) {
      return name.endsWith(text)
          && name.length() > text.length()
          && isSmall(name.charAt(name.length() - text.length() - 1));
    }

    private static boolean isSmall(char last) {
      return last >= 'a' && last <= 'z' || last >= '0' && last <= '9';
    }
  }

  private static final List<Ending> ENDINGS =
      List.of(
          new Ending("WireM2", Units.SQUARE_MILLIMETRE),
          new Ending("M2", Units.SQUARE_METRE),
          new Ending("CoatingM", Units.MICROMETRE),
          new Ending("M", Unit.METRE),
          new Ending("Rad", Units.DEGREE),
          new Ending("Pa", Units.PASCAL),
          new Ending("N", Units.NEWTON),
          new Ending("Nm", Units.NEWTON_METRE),
          new Ending("Kg", Units.KILOGRAM),
          new Ending("V", Units.VOLT),
          new Ending("A", Units.AMPERE),
          new Ending("C", Units.CELSIUS),
          new Ending("Ohm", Units.OHM),
          new Ending("S", Units.SECOND),
          new Ending("Share", Units.PERCENT));

  private Suffix() {}

  /** The unit to print a number in: the designer's if it is of the right kind. */
  static Unit unit(String name, Unit shown) {
    Unit usual =
        ENDINGS.stream()
            .filter(ending -> ending.ends(name))
            .map(Ending::unit)
            .findFirst()
            .orElse(Unit.NUMBER);
    boolean fits = usual.dimension() == shown.dimension() && shown.dimension() != Dimension.NUMBER;
    return fits ? shown : usual;
  }
}

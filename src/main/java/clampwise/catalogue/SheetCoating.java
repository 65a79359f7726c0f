package clampwise.catalogue;

import clampwise.calc.trail.Table;
import java.util.Locale;
import java.util.Optional;

/**
 * The metallic coating of a steel sheet, from its designation.
 *
 * @param letters the letters of its designation, such as {@code G} of G90
 * @param number the number after them, such as {@code 90}
 * @param isZinc whether it is zinc; else it is 55 % Al-Zn
 */
public record SheetCoating(String letters, String number, boolean isZinc) {

  /** The coating that a designation means, if the program knows it. */
  public static Optional<SheetCoating> of(String written) {
    String name = plain(written);
    if (name.contains("ALZN")) {
      return Optional.of(new SheetCoating("ALZN", "", false));
    }
    int digits = 0;
    while (digits < name.length() && !Character.isDigit(name.charAt(digits))) {
      digits++;
    }
    String letters = name.substring(0, digits);
    String number = number(name, digits);
    return switch (letters) {
      case "AZ", "AZM" -> Optional.of(new SheetCoating(letters, number, false));
      case "G", "Z" ->
          number.isEmpty()
              ? Optional.empty()
              : Optional.of(new SheetCoating(letters, number, true));
      default -> Optional.empty();
    };
  }

  private static String plain(String written) {
    StringBuilder plain = new StringBuilder();
    for (char letter : written.toUpperCase(Locale.ROOT).toCharArray()) {
      if (Character.isLetterOrDigit(letter)) {
        plain.append(letter);
      }
    }
    return plain.toString();
  }

  private static String number(String name, int from) {
    int to = from;
    while (to < name.length() && Character.isDigit(name.charAt(to))) {
      to++;
    }
    return name.substring(from, to);
  }

  /**
   * Zinc on both sides together.
   *
   * @param table designations in ounces with their metric equals, ASTM A653
   * @return mass [g/m²]; nothing for a coating that is not zinc or not in the table
   */
  public Optional<Double> gramsPerM2(Table table) {
    if (!isZinc) {
      return Optional.empty();
    }
    return letters.equals("Z")
        ? Optional.of(Double.parseDouble(number))
        : table.row("coating", letters + number).map(row -> row.number("mass"));
  }
}

package clampwise.job;

import clampwise.units.Dimension;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Regular expressions (ECMA 262) of quantities as the reader takes them. */
final class SchemaPatterns {

  /** Dimensions for which a job can declare the unit of bare numbers. */
  static final Set<Dimension> WITH_DEFAULT =
      Set.of(
          Dimension.LENGTH, Dimension.ANGLE, Dimension.PRESSURE, Dimension.FORCE, Dimension.MASS);

  private static final String DIGITS = "[0-9½¼¾⅛⅜⅝⅞.]";
  private static final String NUMBER = DIGITS + "(?:[0-9½¼¾⅛⅜⅝⅞.,/ -]*[0-9½¼¾⅛⅜⅝⅞])?";
  private static final String SIGN = "[-−+]? ?";
  private static final String WITH_UNIT = "(?:(?:[ ,-]{0,2}" + NUMBER + " ?[a-zA-Z\"'″”′’]+\\.?)+)";
  private static final String RATIO = NUMBER + " ?: ?[0-9.]+";

  private SchemaPatterns() {}

  /** A quantity of a kind; the unit may be missing where a job can declare one. */
  static String of(QuantityKind<?> kind, boolean bare) {
    String sign = kind.least() < 0 ? SIGN : "";
    return whole(sign + unsigned(kind.dimension(), bare));
  }

  static String thickness(boolean bare) {
    return whole("[0-9]+ ?(?:[gG][aA]|[gG][aA][uU]?[gG][eE])|" + unsigned(Dimension.LENGTH, bare));
  }

  static String range(boolean bare) {
    return whole(
        "(?:"
            + WITH_UNIT
            + "|"
            + NUMBER
            + ") to "
            + length(bare)
            + "|[0-9.]+ ?[-–] ?"
            + length(bare));
  }

  static String spot(boolean bare) {
    return whole(SIGN + length(bare) + " ?, ?" + SIGN + length(bare));
  }

  static String size(boolean bare) {
    return whole("(?:" + WITH_UNIT + "|" + NUMBER + ") ?[x×] ?" + length(bare));
  }

  /** One of two lengths: here a unit is any word, lest the patterns grow beyond reading. */
  private static String length(boolean bare) {
    return bare ? "(?:" + WITH_UNIT + "|" + NUMBER + ")" : WITH_UNIT;
  }

  /** The word of a unit by itself. */
  static String unit(Dimension dimension) {
    return whole(units(dimension));
  }

  private static String whole(String pattern) {
    return "^ *(?:" + pattern + ") *$";
  }

  private static String unsigned(Dimension dimension, boolean bare) {
    String unit = " ?" + units(dimension);
    String one = NUMBER + unit;
    String alone = bare && WITH_DEFAULT.contains(dimension) ? "|" + NUMBER : "";
    return switch (dimension) {
      case LENGTH -> "(?:" + one + "(?:[ ,-]{0,2}" + one + ")*" + alone + ")";
      case ANGLE -> "(?:" + one + "|" + RATIO + "|[0-9.]+/[0-9.]+" + alone + ")";
      case WIRE_SIZE -> "(?:" + one + "|[1-4]/0 ?[aA][wW][gG])";
      case NUMBER -> "(?:" + NUMBER + "|" + one + "|" + RATIO + ")";
      default -> "(?:" + one + alone + ")";
    };
  }

  private static String units(Dimension dimension) {
    Set<String> spellings = new LinkedHashSet<>(Units.of(dimension).keySet());
    List<String> longestFirst =
        spellings.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
    String join = dimension == Dimension.TORQUE ? "[ .·⋅-]?" : "";
    return longestFirst.stream()
        .map(spelling -> letters(spelling, join))
        .collect(Collectors.joining("|", "(?:", ")\\.?"));
  }

  private static String letters(String spelling, String join) {
    return spelling.chars().mapToObj(c -> letter((char) c)).collect(Collectors.joining(join));
  }

  private static String letter(char c) {
    return switch (c) {
      case '2' -> "[2²]";
      case '"' -> "[\"″”]";
      case '\'' -> "['′’]";
      case '°' -> "[°º] ?";
      case 'ω' -> "[ωΩ]";
      default ->
          Character.isLetter(c) ? "[" + c + Character.toUpperCase(c) + "]" : String.valueOf(c);
    };
  }

  /** The unit of a dimension as printed, for the reference page. */
  static List<String> symbols(Dimension dimension) {
    return Units.of(dimension).values().stream().map(Unit::symbol).distinct().toList();
  }
}

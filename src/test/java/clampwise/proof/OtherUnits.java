package clampwise.proof;

import clampwise.units.Dimension;
import clampwise.units.Parsed;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Writes every quantity in the unit of the other system, to all digits. */
final class OtherUnits implements Change {

  private record Other(Dimension dimension, String symbol, double factor, double offset) {}

  private static final double LBF_N = 4.4482216152605;
  private static final double PSF_PA = LBF_N / (0.3048 * 0.3048);

  private static final Map<String, Other> OTHERS =
      Map.ofEntries(
          Map.entry("mm", new Other(Dimension.LENGTH, "in", 0.0254, 0)),
          Map.entry("m", new Other(Dimension.LENGTH, "ft", 0.3048, 0)),
          Map.entry("in", new Other(Dimension.LENGTH, "mm", 0.001, 0)),
          Map.entry("ft", new Other(Dimension.LENGTH, "m", 1, 0)),
          Map.entry("mph", new Other(Dimension.SPEED, "m/s", 1, 0)),
          Map.entry("m/s", new Other(Dimension.SPEED, "mph", 0.44704, 0)),
          Map.entry("psf", new Other(Dimension.PRESSURE, "kPa", 1000, 0)),
          Map.entry("Pa", new Other(Dimension.PRESSURE, "psf", PSF_PA, 0)),
          Map.entry("kPa", new Other(Dimension.PRESSURE, "psf", PSF_PA, 0)),
          Map.entry("lbf", new Other(Dimension.FORCE, "N", 1, 0)),
          Map.entry("N", new Other(Dimension.FORCE, "lbf", LBF_N, 0)),
          Map.entry("kN", new Other(Dimension.FORCE, "lbf", LBF_N, 0)),
          Map.entry("kg", new Other(Dimension.MASS, "lb", 0.45359237, 0)),
          Map.entry("°C", new Other(Dimension.TEMPERATURE, "°F", 5 / 9.0, -160 / 9.0)),
          Map.entry("°F", new Other(Dimension.TEMPERATURE, "°C", 1, 0)));

  private static final Pattern QUANTITY =
      Pattern.compile(
          "(?<![\\w.])(-?[\\d.]+(?:[ -]\\d+/\\d+|/\\d+)?) "
              + "(mm|m/s|m|in|ft|mph|psf|k?Pa|lbf|k?N|kg|°C|°F)(?![\\w²³/°])");

  @Override
  public Draft of(Draft draft) {
    return Paths.texts(draft, (path, text) -> path.startsWith("job") ? text : other(text));
  }

  private static String other(String text) {
    return text.contains("/°C") ? text : QUANTITY.matcher(text).replaceAll(OtherUnits::converted);
  }

  private static String converted(MatchResult found) {
    Other other = OTHERS.get(found.group(2));
    Parsed parsed = QuantityText.parse(found.group(), other.dimension(), Optional.empty());
    if (!(parsed instanceof Parsed.Value value)) {
      throw new IllegalArgumentException(found.group());
    }
    Unit unit = new Unit(other.symbol(), other.dimension(), other.factor(), other.offset());
    return new BigDecimal(unit.fromSi(value.si()))
            .setScale(9, RoundingMode.HALF_EVEN)
            .stripTrailingZeros()
            .toPlainString()
        + " "
        + other.symbol();
  }
}

package clampwise.units;

import java.util.Optional;

/** Reads quantities as people write them: {@code 31'-7 1/2"}, {@code 4:12}, {@code 30 psf}. */
public final class QuantityText {

  private QuantityText() {}

  /**
   * The quantity of a text.
   *
   * @param defaultUnit unit of a number without one, if the writer declared any
   */
  public static Parsed parse(String text, Dimension dimension, Optional<Unit> defaultUnit) {
    Faults faults = new Faults(text, dimension);
    return Terms.read(text)
        .map(terms -> new Conversion(dimension, defaultUnit, faults).of(terms))
        .orElseGet(faults::noQuantity);
  }

  /** A sheet thickness: a length, or a gauge such as {@code 24 ga}, whose value is its number. */
  public static Parsed parseThickness(String text, Optional<Unit> defaultUnit) {
    return Terms.read(text)
        .filter(QuantityText::isGauge)
        .map(QuantityText::gauge)
        .orElseGet(() -> orGauge(parse(text, Dimension.LENGTH, defaultUnit)));
  }

  private static Parsed orGauge(Parsed parsed) {
    return parsed instanceof Parsed.Fault fault
        ? new Parsed.Fault(fault.found(), "a sheet thickness such as 24 ga or 0.6 mm")
        : parsed;
  }

  private static boolean isGauge(Terms terms) {
    String unit = Spelling.normal(terms.first().unit());
    boolean named = unit.equals("ga") || unit.equals("gauge") || unit.equals("gage");
    return named && terms.terms().size() == 1;
  }

  private static Parsed gauge(Terms terms) {
    Figure figure = terms.first().figure();
    boolean whole = !figure.isFraction() && figure.whole() == Math.rint(figure.whole());
    return whole && !terms.negative() && figure.commas() == Figure.Commas.NONE
        ? new Parsed.Value(figure.whole(), Units.GAUGE)
        : new Parsed.Fault("a gauge that is no whole number", "a gauge such as 24 ga");
  }
}

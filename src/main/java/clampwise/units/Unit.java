package clampwise.units;

/**
 * A unit of measurement as the trade writes it.
 *
 * <p>SI value = written value × {@code factor} + {@code offset}.
 *
 * @param symbol as printed, such as {@code mm} or {@code psf}
 * @param dimension what it measures
 * @param factor SI units in one of this unit
 * @param offset SI value at zero of this unit; zero for all but temperatures
 */
public record Unit(String symbol, Dimension dimension, double factor, double offset) {

  public static final Unit METRE = of("m", Dimension.LENGTH, 1);
  public static final Unit CENTIMETRE = of("cm", Dimension.LENGTH, 0.01);
  public static final Unit MILLIMETRE = of("mm", Dimension.LENGTH, 0.001);
  public static final Unit INCH = of("in", Dimension.LENGTH, 0.0254);
  public static final Unit FOOT = of("ft", Dimension.LENGTH, 0.3048);
  public static final Unit NUMBER = of("", Dimension.NUMBER, 1);

  /** A unit that is a plain multiple of SI. */
  public static Unit of(String symbol, Dimension dimension, double factor) {
    return new Unit(symbol, dimension, factor, 0);
  }

  /** The SI value of a number written in this unit. */
  public double toSi(double written) {
    return written * factor + offset;
  }

  /** The number one would write in this unit for an SI value. */
  public double fromSi(double si) {
    return (si - offset) / factor;
  }
}

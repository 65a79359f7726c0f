package clampwise.job;

import clampwise.source.Span;
import clampwise.units.Dimension;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.List;

/**
 * How one type of quantity is written and how large it may be.
 *
 * @param least smallest value in SI
 * @param most largest value in SI
 * @param words what it is, with examples
 * @param range the allowed values in words
 */
public record QuantityKind<Q extends Quantity>(
    Class<Q> type,
    Dimension dimension,
    double least,
    double most,
    String words,
    String range,
    Maker<Q> maker) {

  /** Makes the quantity of its parts. */
  @FunctionalInterface
  public interface Maker<Q extends Quantity> {
    Q make(double si, Unit unit, Span at);
  }

  static final QuantityKind<Quantity.Length> LENGTH =
      new QuantityKind<>(
          Quantity.Length.class,
          Dimension.LENGTH,
          0,
          10_000,
          "a length with its unit, such as 12 mm or 3/4 in",
          "a length from 0 to 10000 m",
          Quantity.Length::new);

  static final QuantityKind<Quantity.Offset> OFFSET =
      new QuantityKind<>(
          Quantity.Offset.class,
          Dimension.LENGTH,
          -10_000,
          10_000,
          "a distance with its unit, such as 2 ft 6 in or 750 mm",
          "a distance of at most 10000 m",
          Quantity.Offset::new);

  private static final double BELOW_UPRIGHT = Math.toRadians(89.999);
  private static final double MOST_YEARS = Units.YEAR.toSi(200);

  private static final List<QuantityKind<?>> ALL =
      List.of(
          LENGTH,
          OFFSET,
          new QuantityKind<>(
              Quantity.Slope.class,
              Dimension.ANGLE,
              0,
              BELOW_UPRIGHT,
              "a slope, such as 4:12 or 18 deg",
              "a slope from 0 to below 90 deg",
              Quantity.Slope::new),
          new QuantityKind<>(
              Quantity.Azimuth.class,
              Dimension.ANGLE,
              0,
              2 * Math.PI,
              "a compass direction, such as 180 deg",
              "a direction from 0 to 360 deg, clockwise from north",
              Quantity.Azimuth::new),
          new QuantityKind<>(
              Quantity.Mass.class,
              Dimension.MASS,
              0,
              100_000,
              "a mass with its unit, such as 21 kg or 46 lb",
              "a mass from 0 to 100 t",
              Quantity.Mass::new),
          new QuantityKind<>(
              Quantity.Force.class,
              Dimension.FORCE,
              0,
              1e7,
              "a force with its unit, such as 2.4 kN or 540 lbf",
              "a force from 0 to 10 MN",
              Quantity.Force::new),
          new QuantityKind<>(
              Quantity.Pressure.class,
              Dimension.PRESSURE,
              0,
              1e6,
              "a pressure with its unit, such as 30 psf or 2.4 kPa",
              "a pressure from 0 to 1 MPa",
              Quantity.Pressure::new),
          new QuantityKind<>(
              Quantity.Area.class,
              Dimension.AREA,
              0,
              1e6,
              "an area with its unit, such as 20 ft² or 1.9 m²",
              "an area from 0 to 1 km²",
              Quantity.Area::new),
          new QuantityKind<>(
              Quantity.Speed.class,
              Dimension.SPEED,
              0,
              200,
              "a speed with its unit, such as 115 mph or 51 m/s",
              "a speed from 0 to 200 m/s",
              Quantity.Speed::new),
          new QuantityKind<>(
              Quantity.Temperature.class,
              Dimension.TEMPERATURE,
              -100,
              150,
              "a temperature with its unit, such as -22 °C",
              "a temperature from -100 °C to 150 °C",
              Quantity.Temperature::new),
          new QuantityKind<>(
              Quantity.Torque.class,
              Dimension.TORQUE,
              0,
              10_000,
              "a torque with its unit, such as 17 N m or 150 lbf in",
              "a torque from 0 to 10 kN m",
              Quantity.Torque::new),
          new QuantityKind<>(
              Quantity.WireSize.class,
              Dimension.WIRE_SIZE,
              0,
              0.01,
              "a conductor size, such as 6 AWG or 16 mm²",
              "a conductor size of at most 10000 mm²",
              Quantity.WireSize::new),
          new QuantityKind<>(
              Quantity.Voltage.class,
              Dimension.VOLTAGE,
              0,
              10_000,
              "a voltage, such as 600 V",
              "a voltage from 0 to 10 kV",
              Quantity.Voltage::new),
          new QuantityKind<>(
              Quantity.Current.class,
              Dimension.CURRENT,
              0,
              10_000,
              "a current, such as 15 A",
              "a current from 0 to 10000 A",
              Quantity.Current::new),
          new QuantityKind<>(
              Quantity.Resistance.class,
              Dimension.RESISTANCE,
              0,
              1e6,
              "a resistance, such as 0.1 ohm",
              "a resistance from 0 to 1000000 ohm",
              Quantity.Resistance::new),
          new QuantityKind<>(
              Quantity.TemperatureRate.class,
              Dimension.TEMPERATURE_RATE,
              -0.01,
              0.01,
              "a change by temperature, such as -0.27 %/°C",
              "a change of at most 1 %/°C",
              Quantity.TemperatureRate::new),
          new QuantityKind<>(
              Quantity.Duration.class,
              Dimension.DURATION,
              0,
              3.6e7,
              "a time, such as 30 s or 6 h",
              "a time from 0 to 10000 h",
              Quantity.Duration::new),
          new QuantityKind<>(
              Quantity.Years.class,
              Dimension.DURATION,
              0,
              MOST_YEARS,
              "a number of years, such as 25 yr",
              "a time from 0 to 200 yr",
              Quantity.Years::new),
          new QuantityKind<>(
              Quantity.Factor.class,
              Dimension.NUMBER,
              0,
              1e6,
              "a plain number, such as 2.5",
              "a number from 0 to 1000000",
              Quantity.Factor::new));

  /** All kinds but sheet thickness, which may also be a gauge. */
  public static List<QuantityKind<?>> all() {
    return ALL;
  }
}

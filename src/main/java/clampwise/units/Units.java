package clampwise.units;

import static clampwise.units.Dimension.ANGLE;
import static clampwise.units.Dimension.AREA;
import static clampwise.units.Dimension.COATING;
import static clampwise.units.Dimension.CURRENT;
import static clampwise.units.Dimension.DURATION;
import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.LINE_LOAD;
import static clampwise.units.Dimension.MASS;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.PRESSURE;
import static clampwise.units.Dimension.RESISTANCE;
import static clampwise.units.Dimension.SPEED;
import static clampwise.units.Dimension.TEMPERATURE;
import static clampwise.units.Dimension.TEMPERATURE_RATE;
import static clampwise.units.Dimension.TORQUE;
import static clampwise.units.Dimension.UNIT_WEIGHT;
import static clampwise.units.Dimension.VOLTAGE;
import static clampwise.units.Dimension.WIRE_SIZE;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Every unit the program knows, with the spellings people use. */
public final class Units {

  private static final double POUND_KG = 0.45359237;

  /** Standard acceleration of gravity [m/s²], exact by definition (CGPM 1901). */
  public static final double GRAVITY_M_PER_S2 = 9.80665;

  private static final double POUND_FORCE_N = POUND_KG * GRAVITY_M_PER_S2;
  private static final double FOOT_M = 0.3048;
  private static final double INCH_M = 0.0254;
  private static final double PSF_PA = POUND_FORCE_N / (FOOT_M * FOOT_M);

  /** Sheet gauge: a number that means a thickness only together with the metal. */
  public static final Unit GAUGE = Unit.of("ga", LENGTH, 1);

  /** American wire gauge; not a multiple of anything, so its factor is not used. */
  public static final Unit AWG = Unit.of("AWG", WIRE_SIZE, 1);

  public static final Unit DEGREE = Unit.of("deg", ANGLE, Math.PI / 180);
  public static final Unit PERCENT = Unit.of("%", NUMBER, 0.01);
  public static final Unit PASCAL = Unit.of("Pa", PRESSURE, 1);
  public static final Unit PSF = Unit.of("psf", PRESSURE, PSF_PA);
  public static final Unit NEWTON = Unit.of("N", FORCE, 1);
  public static final Unit POUND_FORCE = Unit.of("lbf", FORCE, POUND_FORCE_N);
  public static final Unit SQUARE_METRE = Unit.of("m²", AREA, 1);
  public static final Unit SQUARE_FOOT = Unit.of("ft²", AREA, FOOT_M * FOOT_M);
  public static final Unit KILOGRAM = Unit.of("kg", MASS, 1);
  public static final Unit POUND = Unit.of("lb", MASS, POUND_KG);
  public static final Unit NEWTON_PER_METRE = Unit.of("N/m", LINE_LOAD, 1);
  public static final Unit PLF = Unit.of("plf", LINE_LOAD, POUND_FORCE_N / FOOT_M);
  public static final Unit NEWTON_PER_CUBIC_METRE = Unit.of("N/m³", UNIT_WEIGHT, 1);
  public static final Unit PCF = Unit.of("pcf", UNIT_WEIGHT, PSF_PA / FOOT_M);
  public static final Unit NEWTON_METRE = Unit.of("N m", TORQUE, 1);
  public static final Unit FOOT_POUND = Unit.of("lbf ft", TORQUE, POUND_FORCE_N * FOOT_M);
  public static final Unit METRE_PER_SECOND = Unit.of("m/s", SPEED, 1);
  public static final Unit MPH = Unit.of("mph", SPEED, 0.44704);
  public static final Unit CELSIUS = Unit.of("°C", TEMPERATURE, 1);
  public static final Unit FAHRENHEIT = new Unit("°F", TEMPERATURE, 5.0 / 9, -160.0 / 9);
  public static final Unit VOLT = Unit.of("V", VOLTAGE, 1);
  public static final Unit AMPERE = Unit.of("A", CURRENT, 1);
  public static final Unit OHM = Unit.of("ohm", RESISTANCE, 1);

  public static final Unit SECOND = Unit.of("s", DURATION, 1);
  public static final Unit MINUTE = Unit.of("min", DURATION, 60);
  public static final Unit HOUR = Unit.of("h", DURATION, 3600);

  /** A mean year of the Gregorian calendar. */
  public static final Unit YEAR = Unit.of("yr", DURATION, 365.2425 * 86_400);

  public static final Unit MICROMETRE = Unit.of("µm", COATING, 1e-6);

  /** Share of a value by which it changes for each degree. */
  public static final Unit PERCENT_PER_DEGREE = Unit.of("%/°C", TEMPERATURE_RATE, 0.01);

  /** A thousand circular mils; a circular mil is a circle of 0.001 in diameter. */
  public static final Unit KCMIL =
      Unit.of("kcmil", WIRE_SIZE, 1000 * Math.PI / 4 * Math.pow(INCH_M / 1000, 2));

  public static final Unit SQUARE_MILLIMETRE = Unit.of("mm²", WIRE_SIZE, 1e-6);

  /** Slope in percent of the run; its values are tangents, so its factor is not used. */
  static final Unit PERCENT_SLOPE = Unit.of("%", ANGLE, 1);

  private static final Map<Dimension, Map<String, Unit>> KNOWN = known();

  private Units() {}

  /** The unit of a dimension that a spelling means, whatever its case, spaces and hyphens. */
  public static Optional<Unit> find(Dimension dimension, String spelling) {
    return Optional.ofNullable(of(dimension).get(Spelling.normal(spelling)));
  }

  /** The unit of a dimension that an unknown spelling most likely means. */
  public static Optional<Unit> nearest(Dimension dimension, String spelling) {
    return Spelling.nearest(spelling, of(dimension));
  }

  /** A dimension in which a spelling is known. */
  static Optional<Dimension> dimensionOf(String spelling) {
    String normal = Spelling.normal(spelling);
    return KNOWN.keySet().stream().filter(d -> of(d).containsKey(normal)).findFirst();
  }

  /** The units of a dimension by spelling, in lower case. */
  public static Map<String, Unit> of(Dimension dimension) {
    return KNOWN.getOrDefault(dimension, Map.of());
  }

  /** All units, each once. */
  static Collection<Unit> all() {
    return KNOWN.values().stream().flatMap(m -> m.values().stream()).distinct().toList();
  }

  private static Map<Dimension, Map<String, Unit>> known() {
    Table table = new Table();
    lengths(table);
    loads(table);
    others(table);
    electrical(table);
    return Collections.unmodifiableMap(table.rows);
  }

  private static void lengths(Table table) {
    table.add(Unit.MILLIMETRE, "millimetre", "millimeter", "millimetres", "millimeters");
    table.add(Unit.CENTIMETRE, "centimetre", "centimeter", "centimetres", "centimeters");
    table.add(Unit.METRE, "metre", "meter", "metres", "meters");
    table.add(Unit.INCH, "inch", "inches", "ins", "\"", "''");
    table.add(Unit.FOOT, "foot", "feet", "'");
    table.add(SQUARE_METRE, "sqm");
    table.add(SQUARE_FOOT, "sqft", "sf");
    table.add(DEGREE, "°", "degs", "degree", "degrees");
    table.add(Unit.of("rad", ANGLE, 1), "radians");
    table.add(PERCENT_SLOPE, "percent");
  }

  private static void loads(Table table) {
    table.add(KILOGRAM, "kgs");
    table.add(POUND, "lbs", "pound", "pounds", "lbm");
    table.add(NEWTON, "newton", "newtons");
    table.add(Unit.of("kN", FORCE, 1000));
    table.add(POUND_FORCE, "lb", "lbs", "pound", "pounds");
    table.add(Unit.of("kip", FORCE, 1000 * POUND_FORCE_N), "kips");
    table.add(PASCAL, "n/m2", "pascal", "pascals");
    table.add(Unit.of("kPa", PRESSURE, 1000), "kn/m2");
    table.add(PSF, "lb/ft2", "lbf/ft2", "lbs/ft2", "lb/sqft", "lbs/sqft");
    table.add(NEWTON_PER_METRE);
    table.add(Unit.of("kN/m", LINE_LOAD, 1000));
    table.add(PLF, "lb/ft", "lbf/ft", "lbs/ft");
    table.add(NEWTON_PER_CUBIC_METRE, "n/m3");
    table.add(Unit.of("kN/m³", UNIT_WEIGHT, 1000), "kn/m3");
    table.add(PCF, "lb/ft3", "lbf/ft3", "lbs/ft3");
    table.add(Unit.of("psi", PRESSURE, PSF_PA * 144), "lb/in2", "lbf/in2");
  }

  private static void others(Table table) {
    table.add(METRE_PER_SECOND);
    table.add(MPH, "mi/h");
    table.add(Unit.of("km/h", SPEED, 1 / 3.6), "kmh", "kph");
    table.add(CELSIUS, "c", "degc", "celsius");
    table.add(FAHRENHEIT, "f", "degf", "fahrenheit");
    table.add(NEWTON_METRE);
    double inchPoundNm = POUND_FORCE_N * INCH_M;
    table.add(Unit.of("lbf in", TORQUE, inchPoundNm), "lbin", "inlb", "inlbf", "inlbs");
    table.add(FOOT_POUND, "lbft", "ftlb", "ftlbf", "ftlbs");
    table.add(PERCENT, "percent", "pct");
  }

  private static void electrical(Table table) {
    table.add(VOLT, "volt", "volts", "vdc");
    table.add(Unit.of("kV", VOLTAGE, 1000));
    table.add(AMPERE, "amp", "amps", "ampere", "amperes");
    table.add(OHM, "ohms", "ω");
    table.add(SECOND, "sec", "second", "seconds");
    table.add(MINUTE, "minute", "minutes", "mins");
    table.add(HOUR, "hr", "hrs", "hour", "hours");
    table.add(YEAR, "y", "yrs", "year", "years");
    table.add(MICROMETRE, "um", "micron", "microns");
    table.add(Unit.of("mil", COATING, 0.001 * INCH_M), "mils");
    table.add(PERCENT_PER_DEGREE, "%/c", "%/k");
    table.add(SQUARE_MILLIMETRE, "sqmm");
    table.add(KCMIL, "mcm");
    table.add(AWG, "gauge", "#");
  }

  private static final class Table {

    private final EnumMap<Dimension, Map<String, Unit>> rows = new EnumMap<>(Dimension.class);

    void add(Unit unit, String... spellings) {
      Map<String, Unit> row = rows.computeIfAbsent(unit.dimension(), d -> new LinkedHashMap<>());
      row.put(Spelling.normal(unit.symbol()), unit);
      for (String spelling : spellings) {
        row.put(spelling, unit);
      }
    }
  }
}

package clampwise.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static systems.uom.common.USCustomary.FAHRENHEIT;
import static systems.uom.common.USCustomary.FOOT;
import static systems.uom.common.USCustomary.INCH;
import static systems.uom.common.USCustomary.MILE_PER_HOUR;
import static systems.uom.common.USCustomary.POUND;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.KILOMETRE_PER_HOUR;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.METRE_PER_SQUARE_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.YEAR;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Factors against the reference implementation of JSR-385 and its collection of US units. */
class UnitFactorsTest {

  /** A pound in standard gravity. */
  private static final Unit<?> POUND_FORCE =
      POUND.multiply(METRE_PER_SQUARE_SECOND.multiply(9.80665));

  @Test
  void everyFactorIsThatOfTheReferenceLibrary() {
    reference().forEach(UnitFactorsTest::assertSame);
  }

  @Test
  void everyUnitButGaugesAndSlopesIsCompared() {
    assertThat(Units.all())
        .extracting(clampwise.units.Unit::symbol)
        .filteredOn(s -> !s.equals("AWG") && !s.equals("%"))
        .hasSameElementsAs(reference().keySet());
  }

  /** Handbook table 2.12; the digits printed there are the tolerance. */
  @ParameterizedTest
  @CsvSource({
    "in, LENGTH, 0.0254, 1e-9",
    "ft, LENGTH, 0.3048, 1e-9",
    "lbf, FORCE, 4.44822, 5e-6",
    "psf, PRESSURE, 47.880, 5e-4",
    "lbf in, TORQUE, 0.112985, 5e-7",
    "lbf ft, TORQUE, 1.35582, 5e-6",
    "kip, FORCE, 4448, 0.5",
    "mph, SPEED, 0.44704, 1e-9"
  })
  void factorsAreThoseOfHandbookTable212(String symbol, Dimension dimension, double si, double t) {
    assertThat(Units.find(dimension, symbol).orElseThrow().factor()).isCloseTo(si, within(t));
  }

  /** Module loads of handbook table 2.9 in psf [computed]. */
  @ParameterizedTest
  @CsvSource({
    "600, 12.5",
    "800, 16.7",
    "1200, 25.1",
    "1600, 33.4",
    "2400, 50.1",
    "3600, 75.2",
    "5400, 112.8"
  })
  void pascalsAreThePsfOfHandbookTable29(double pa, double psf) {
    assertThat(Units.PSF.fromSi(pa)).isCloseTo(psf, within(0.05));
  }

  private static void assertSame(String symbol, Unit<?> reference) {
    clampwise.units.Unit ours = ours(symbol);
    for (double written : new double[] {0, 1, -40, 123.456}) {
      assertThat(ours.toSi(written))
          .as(symbol)
          .isCloseTo(toSi(reference, written), within(1e-9 * Math.max(1, ours.factor() * 100)));
    }
  }

  private static clampwise.units.Unit ours(String symbol) {
    return Units.all().stream().filter(u -> u.symbol().equals(symbol)).findFirst().orElseThrow();
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double toSi(Unit reference, double written) {
    Unit base = reference.isCompatible(CELSIUS) ? CELSIUS : reference.getSystemUnit();
    double si = reference.getConverterTo(base).convert(written);
    return si;
  }

  private static Map<String, Unit<?>> reference() {
    Map<String, Unit<?>> units = new LinkedHashMap<>();
    metric(units);
    customary(units);
    return units;
  }

  private static void metric(Map<String, Unit<?>> units) {
    units.put("mm", MetricPrefix.MILLI(METRE));
    units.put("cm", MetricPrefix.CENTI(METRE));
    units.put("m", METRE);
    units.put("m²", SQUARE_METRE);
    units.put("mm²", MetricPrefix.MILLI(METRE).pow(2));
    units.put("deg", RADIAN.multiply(Math.PI).divide(180));
    units.put("rad", RADIAN);
    units.put("kg", KILOGRAM);
    units.put("N", NEWTON);
    units.put("kN", MetricPrefix.KILO(NEWTON));
    units.put("Pa", PASCAL);
    units.put("kPa", MetricPrefix.KILO(PASCAL));
    units.put("m/s", METRE_PER_SECOND);
    units.put("km/h", KILOMETRE_PER_HOUR);
    units.put("°C", CELSIUS);
    units.put("N m", NEWTON.multiply(METRE));
    units.put("V", VOLT);
    units.put("kV", MetricPrefix.KILO(VOLT));
    units.put("A", AMPERE);
    units.put("ohm", OHM);
    units.put("s", SECOND);
    units.put("min", MINUTE);
    units.put("h", HOUR);
    units.put("yr", YEAR);
    units.put("µm", MetricPrefix.MICRO(METRE));
    units.put("%/°C", PERCENT.divide(KELVIN));
    units.put("N/m", NEWTON.divide(METRE));
    units.put("kN/m", MetricPrefix.KILO(NEWTON).divide(METRE));
    units.put("N/m³", NEWTON.divide(METRE.pow(3)));
    units.put("kN/m³", MetricPrefix.KILO(NEWTON).divide(METRE.pow(3)));
  }

  private static void customary(Map<String, Unit<?>> units) {
    units.put("in", INCH);
    units.put("mil", INCH.divide(1000));
    units.put("ft", FOOT);
    units.put("ft²", FOOT.pow(2));
    units.put("lb", POUND);
    units.put("lbf", POUND_FORCE);
    units.put("kip", POUND_FORCE.multiply(1000));
    units.put("psf", POUND_FORCE.divide(FOOT.pow(2)));
    units.put("psi", POUND_FORCE.divide(INCH.pow(2)));
    units.put("plf", POUND_FORCE.divide(FOOT));
    units.put("pcf", POUND_FORCE.divide(FOOT.pow(3)));
    units.put("mph", MILE_PER_HOUR);
    units.put("°F", FAHRENHEIT);
    units.put("lbf in", POUND_FORCE.multiply(INCH));
    units.put("lbf ft", POUND_FORCE.multiply(FOOT));
    units.put("kcmil", INCH.divide(1000).pow(2).multiply(1000 * Math.PI / 4));
  }
}

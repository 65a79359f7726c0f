package clampwise.job;

import clampwise.units.Unit;

/** A written number with a unit. */
public sealed interface Quantity extends Written {

  /** The value in SI. */
  double si();

  /** The unit it was written in, in which findings print it. */
  Unit unit();

  /** A length, never negative [m]. */
  record Length(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double m() {
      return si;
    }
  }

  /** A coordinate or difference of lengths, of either sign [m]. */
  record Offset(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double m() {
      return si;
    }
  }

  /** A roof slope from the horizontal, 0 to below 90 degrees [rad]; also written as 4:12. */
  record Slope(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double rad() {
      return si;
    }
  }

  /** A compass direction, 0 to 360 degrees from north clockwise [rad]. */
  record Azimuth(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double rad() {
      return si;
    }
  }

  /**
   * A sheet thickness: a length [m], or a gauge number where {@link #isGauge()}, which only means a
   * thickness together with the metal.
   */
  record Thickness(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    /** Whether {@code si} is a gauge number. */
    public boolean isGauge() {
      return unit.symbol().equals("ga");
    }
  }

  /** A mass [kg]. */
  record Mass(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double kg() {
      return si;
    }
  }

  /** A force [N]. */
  record Force(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double n() {
      return si;
    }
  }

  /** A pressure [Pa], never negative. */
  record Pressure(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double pa() {
      return si;
    }
  }

  /** An area [m²]. */
  record Area(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double m2() {
      return si;
    }
  }

  /** A speed [m/s]. */
  record Speed(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double mPerS() {
      return si;
    }
  }

  /** A temperature [°C]. */
  record Temperature(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double celsius() {
      return si;
    }
  }

  /** A tightening torque [N m]. */
  record Torque(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double nM() {
      return si;
    }
  }

  /** A conductor size: cross-section [m²], written in mm² or AWG. */
  record WireSize(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double m2() {
      return si;
    }
  }

  /** A voltage [V]. */
  record Voltage(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double v() {
      return si;
    }
  }

  /** A current [A]. */
  record Current(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double a() {
      return si;
    }
  }

  /** A resistance [Ω]. */
  record Resistance(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double ohm() {
      return si;
    }
  }

  /** The share by which a value changes for each degree, of either sign [1/K]. */
  record TemperatureRate(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double perK() {
      return si;
    }
  }

  /** A time [s]. */
  record Duration(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double s() {
      return si;
    }
  }

  /** A long time [s], written in years. */
  record Years(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double s() {
      return si;
    }
  }

  /** A plain number, such as a safety factor. */
  record Factor(double si, Unit unit, clampwise.source.Span at) implements Quantity {
    public double value() {
      return si;
    }
  }
}

package clampwise.units;

import clampwise.units.Figure.Commas;
import clampwise.units.Terms.Term;
import java.util.Optional;
import java.util.Set;

/** Turns the terms of a text into one SI value. */
final class Conversion {

  /** Units in which four digits are rare, so that a comma is likely to be a decimal comma. */
  private static final Set<String> COMMA_UNCLEAR =
      Set.of("m", "cm", "deg", "m²", "kg", "kN", "kPa", "m/s", "km/h", "°C", "N m", "A", "mm²");

  private final Dimension dimension;
  private final Optional<Unit> defaultUnit;
  private final Faults faults;

  Conversion(Dimension dimension, Optional<Unit> defaultUnit, Faults faults) {
    this.dimension = dimension;
    this.defaultUnit = defaultUnit.filter(unit -> unit.dimension() == dimension);
    this.faults = faults;
  }

  Parsed of(Terms terms) {
    if (terms.terms().stream().anyMatch(t -> t.figure().commas() == Commas.UNCLEAR)) {
      return faults.comma();
    }
    return terms.terms().size() == 1 ? single(terms) : sum(terms);
  }

  private Parsed single(Terms terms) {
    Term term = terms.first();
    Optional<Unit> unit = unit(term);
    if (unit.isEmpty()) {
      return term.unit().isEmpty() ? faults.noUnit() : faults.unit(term.unit());
    }
    boolean pitch = term.unit().isEmpty() && unit.get().symbol().startsWith(":");
    return pitch
        ? finite(Scale.toSi(terms.sign() * term.figure().over(), unit.get()), unit.get())
        : value(term.figure(), terms.sign(), unit.get());
  }

  private Parsed value(Figure figure, double sign, Unit unit) {
    if (figure.commas() == Commas.THOUSANDS && COMMA_UNCLEAR.contains(unit.symbol())) {
      return faults.comma();
    }
    if (unit.equals(Units.AWG)) {
      return wireGauge(figure, sign);
    }
    return finite(Scale.toSi(sign * figure.value(), unit), unit);
  }

  private Parsed finite(double si, Unit unit) {
    return Double.isFinite(si) ? new Parsed.Value(si, unit) : faults.noQuantity();
  }

  private Parsed wireGauge(Figure figure, double sign) {
    boolean aught = figure.under() == 0 && figure.whole() == 0 && figure.over() >= 1;
    double gauge = aught ? 1 - figure.over() : figure.value();
    boolean known = gauge == Math.rint(gauge) && gauge >= -3 && gauge <= 40 && sign > 0;
    return known ? new Parsed.Value(Scale.awgM2(gauge), Units.AWG) : faults.noQuantity();
  }

  private Optional<Unit> unit(Term term) {
    if (term.unit().isEmpty()) {
      return bareUnit(term.figure());
    }
    return term.unit().startsWith(":") ? ratio(term.unit()) : Units.find(dimension, term.unit());
  }

  private Optional<Unit> bareUnit(Figure figure) {
    if (defaultUnit.isPresent()) {
      return defaultUnit;
    }
    if (dimension == Dimension.NUMBER) {
      return Optional.of(Unit.NUMBER);
    }
    boolean pitch = dimension == Dimension.ANGLE && figure.under() > 0 && figure.whole() == 0;
    return pitch ? Optional.of(pitchOf(figure)) : Optional.empty();
  }

  /** The unit of a roof pitch that is written as a fraction, {@code 4/12}. */
  private static Unit pitchOf(Figure figure) {
    return Scale.ratio(Dimension.ANGLE, figure.under());
  }

  private Optional<Unit> ratio(String written) {
    boolean allowed = dimension == Dimension.ANGLE || dimension == Dimension.NUMBER;
    return Optional.of(written.substring(1).strip())
        .filter(run -> allowed && isDecimal(run))
        .map(Double::valueOf)
        .filter(run -> run > 0)
        .map(run -> Scale.ratio(dimension, run));
  }

  private static boolean isDecimal(String run) {
    boolean plain = run.chars().allMatch(c -> Scanner.isDigit((char) c) || c == '.');
    return plain && !run.isEmpty() && run.indexOf('.') == run.lastIndexOf('.');
  }

  /** Feet and inches, or any lengths from large to small. */
  private Parsed sum(Terms terms) {
    double sum = 0;
    double last = Double.MAX_VALUE;
    for (Term term : terms.terms()) {
      Optional<Unit> unit = Units.find(dimension, term.unit());
      if (unit.isEmpty()) {
        return term.unit().isEmpty() ? faults.noQuantity() : faults.unit(term.unit());
      }
      if (dimension != Dimension.LENGTH || unit.get().factor() >= last) {
        return faults.noQuantity();
      }
      last = unit.get().factor();
      sum += unit.get().toSi(term.figure().value());
    }
    return finite(terms.sign() * sum, Units.find(dimension, terms.first().unit()).orElseThrow());
  }
}

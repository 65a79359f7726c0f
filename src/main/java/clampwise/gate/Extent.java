package clampwise.gate;

import clampwise.finding.Comparison;
import clampwise.finding.Finding;
import clampwise.job.Count;
import clampwise.job.Text;
import clampwise.source.Span;
import clampwise.units.Parsed;
import clampwise.units.QuantityPrint;
import clampwise.units.QuantityText;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How bad a finding may be before it counts again.
 *
 * @param value worst number, with its unit as written
 * @param places number of places at which it may show
 */
record Extent(Optional<Text> value, Optional<Count> places) {

  /** Digits in which a number is written down; less than one of the last means nothing. */
  private static final int DIGITS = 6;

  private static final double MEANINGLESS = 2e-5;

  /** As bad as a finding is. */
  static Extent of(Finding finding) {
    Span at = finding.at();
    return new Extent(
        written(finding).map(text -> new Text(text, at)),
        Optional.of(new Count(finding.places().size(), at)));
  }

  /** In which way a finding exceeds it, in words; empty if it does not. */
  Optional<String> exceededBy(Finding finding) {
    Optional<String> number = finding.comparison().flatMap(this::exceededBy);
    return number.isPresent() ? number : placesExceededBy(finding.places().size());
  }

  private Optional<String> exceededBy(Comparison now) {
    if (value.isEmpty()) {
      return Optional.empty();
    }
    double most = read(value.get().value(), now.unit());
    double way = Math.signum(now.measuredSi() - now.limitSi());
    double by = (now.measuredSi() - most) * (way == 0 ? 1 : way);
    // A value that cannot be read holds for nothing.
    boolean within = by <= MEANINGLESS * Math.max(Math.abs(most), Math.abs(now.measuredSi()));
    return within
        ? Optional.empty()
        : Optional.of("it is " + shown(now) + " now, against " + value.get().value() + " then");
  }

  private Optional<String> placesExceededBy(int now) {
    return places
        .filter(most -> now > most.value())
        .map(most -> "it shows at " + now + " places now, against " + most.value() + " then");
  }

  private static String shown(Comparison numbers) {
    return QuantityPrint.pair(numbers.measuredSi(), numbers.limitSi(), numbers.unit()).first();
  }

  /** The number of a finding as it is written down; empty where no text gives it back. */
  static Optional<String> written(Finding finding) {
    return finding.comparison().flatMap(Extent::written);
  }

  private static Optional<String> written(Comparison numbers) {
    Unit unit = numbers.unit();
    String plain = QuantityPrint.significant(unit.fromSi(numbers.measuredSi()), DIGITS);
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    return Stream.of(plain + symbol, QuantityPrint.text(numbers.measuredSi(), unit))
        .filter(text -> isClose(read(text, unit), numbers.measuredSi()))
        .findFirst();
  }

  private static boolean isClose(double a, double b) {
    return Math.abs(a - b) <= MEANINGLESS * Math.abs(b);
  }

  private static double read(String text, Unit unit) {
    return QuantityText.parse(text, unit.dimension(), Optional.of(unit))
            instanceof Parsed.Value read
        ? read.si()
        : Double.NaN;
  }
}

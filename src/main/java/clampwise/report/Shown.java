package clampwise.report;

import clampwise.finding.Comparison;
import clampwise.units.QuantityPrint;

/**
 * Compared numbers in the unit the designer wrote.
 *
 * @param measured what the job gives
 * @param limit what it is held against, printed so that it differs where the numbers do
 */
record Shown(String measured, String limit) {

  static Shown of(Comparison numbers) {
    QuantityPrint.Pair pair =
        QuantityPrint.pair(numbers.measuredSi(), numbers.limitSi(), numbers.unit());
    return new Shown(pair.first(), pair.second());
  }
}

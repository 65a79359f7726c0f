package clampwise.facts.durability;

import clampwise.calc.corrosion.CorrosionLoss;
import clampwise.calc.corrosion.FirstYear;
import clampwise.calc.trail.Table;

/** What the air of the site takes off a metal, by the tables. */
final class MetalLoss {

  private MetalLoss() {}

  static CorrosionLoss of(Weathering weathering, String metal, Air air) {
    Table exponents = weathering.metals("corrosion-exponents");
    Table.Row law = exponents.row("metal", metal).orElseThrow();
    FirstYear first =
        new FirstYear(weathering.metals("corrosivity"), weathering.metals("first-year-losses"));
    return new CorrosionLoss(
        first.lossM(metal, air.word()),
        law.number("exponent"),
        law.number("years"),
        exponents.source());
  }
}

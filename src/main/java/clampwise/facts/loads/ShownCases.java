package clampwise.facts.loads;

import clampwise.calc.snow.RoofSnow;
import clampwise.calc.snow.SnowCase;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Writes which snow load case of a roof governs on a module. */
final class ShownCases {

  private static final Source LAID_OUT = Source.of("given", "", "as laid out");

  private ShownCases() {}

  /**
   * The cases where a module lies, and the largest of them.
   *
   * @param fromRidgeM plan distance of its upper edge from the ridge [m]
   */
  static Term write(RoofSnow roof, double fromRidgeM, Work work) {
    Term x = Term.length("x_r", "plan distance of the module from the ridge", fromRidgeM);
    work.write(Line.given(x, LAID_OUT, "its upper edge"));
    List<Term> loads = new ArrayList<>();
    roof.cases().forEach(each -> loads.add(load(each, x, work)));
    Term largest =
        Term.pressure("p_roof", "largest case of the roof itself", roof.largestPa(fromRidgeM));
    String symbols = loads.stream().map(Term::symbol).collect(Collectors.joining(","));
    String formula = loads.size() > 1 ? "max(" + symbols + ")" : symbols;
    String governing = roof.governing(fromRidgeM).name() + " governs";
    work.write(new Line(largest, formula, loads, Source.STATICS, governing));
    return largest;
  }

  /** A case of the same load all over needs no line of its own. */
  private static Term load(SnowCase each, Term x, Work work) {
    Term near = Term.pressure(each.symbol(), each.name(), each.nearRidgePa());
    if (each.nearRidgePa() == each.beyondPa()) {
      return near;
    }
    boolean within = each.isNearRidge(x.si());
    Term used = within ? near : Term.pressure("p_s", "balanced load", each.beyondPa());
    Term load = Term.pressure("p_drift", each.name() + ", on the module", used.si());
    work.write(
        new Line(load, used.symbol(), List.of(used), Source.STATICS, why(each, within, work)));
    return load;
  }

  private static String why(SnowCase each, boolean within, Work work) {
    String reach = QuantityPrint.text(each.nearRidgeM(), work.measure().of(Dimension.LENGTH));
    return within
        ? "the drift reaches "
            + reach
            + " from the ridge; a module that reaches into it takes it whole"
        : "the drift reaches " + reach + " from the ridge, not to the module";
  }
}

package clampwise.facts.loads;

import clampwise.calc.combination.Actions;
import clampwise.calc.combination.Combination;
import clampwise.calc.combination.CombinationWork;
import clampwise.calc.combination.CombinationWork.Part;
import clampwise.calc.combination.Combined;
import clampwise.calc.combination.SlopeComponents;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.units.Dimension;
import java.util.List;

/** Writes how the pressures on a module were got, from wind speed and snow to a combination. */
final class ModuleWork {

  private static final Source ASSUMED =
      Source.of("practice", "snow on arrays", "common practice, no source");

  private final FieldLoads loads;
  private final FieldSite site;

  ModuleWork(FieldLoads loads) {
    this.loads = loads;
    this.site = loads.site();
  }

  /**
   * One combination on a module.
   *
   * @param up whether wind acts away from the roof
   */
  record Case(PlacedModule module, Combination combination, boolean up) {}

  /** All sections up to the net pressure and the pressure down the slope. */
  void write(Case asked, ChainWriter chain) {
    PlacedModule module = asked.module;
    double factorOfSnow = asked.combination.factors().snow();
    double factorOfWind = asked.combination.factors().wind();
    String place = module.name() + ", zone " + loads.of(module).place().zone();
    if (factorOfWind > 0) {
      chain.section("Wind on " + place, work -> wind(asked, work));
    }
    if (factorOfSnow > 0) {
      chain.section("Snow on " + module.name(), work -> snow(module, work));
    }
    chain.section("Dead load of " + module.name(), work -> dead(module, work));
    chain.deciding(
        "On " + module.name() + ": " + asked.combination.name(), work -> combine(asked, work));
  }

  /** The partial factors behind a combination, where the standard has any. */
  void factors(Combination combination, boolean design, ChainWriter chain) {
    FactorWork factors = new FactorWork(site, combination, design);
    chain.section("Partial factors of " + combination.name(), factors::write);
  }

  private void wind(Case asked, Work work) {
    loads.standard().wind().result().ifPresent(wind -> wind.show(asked.module, work));
    Actions actions = loads.of(asked.module).actions();
    double pa = (asked.up ? actions.windUp() : actions.windDown()).normal();
    String symbol = asked.up ? "p_away" : "p_toward";
    String meaning = "design pressure " + (asked.up ? "away from" : "toward") + " the roof";
    boolean acts = asked.up ? pa < 0 : pa > 0;
    if (acts) {
      work.write(
          Term.pressure("W_n", "wind, across the surface", pa),
          symbol,
          Source.STATICS,
          Term.pressure(symbol, meaning, pa));
    }
  }

  private void snow(PlacedModule module, Work work) {
    loads
        .standard()
        .snow()
        .result()
        .ifPresent(
            snow -> {
              Term roof = snow.show(module, work);
              Term load = Term.pressure("S", "snow on the array, on plan", roof.si());
              String carried = "largest case; the array carries its roof's";
              work.write(new Line(load, roof.symbol(), List.of(roof), ASSUMED, carried));
              SlopeComponents.onPlan(load, site.slopeRad().orElseThrow(), work);
            });
  }

  private void dead(PlacedModule module, Work work) {
    Term load = new DeadLoad(site).show(module, work);
    SlopeComponents.onSlope(load, site.slopeRad().orElseThrow(), work);
  }

  private void combine(Case asked, Work work) {
    Actions actions = loads.of(asked.module).actions();
    Combined combined = asked.combination.of(actions);
    CombinationWork lines = new CombinationWork(actions, Dimension.PRESSURE, work);
    lines.write(combined, Part.ALONG);
    lines.write(combined, asked.up ? Part.UP : Part.DOWN);
  }

  /** The sections of several modules, each of equal loads once. */
  void write(List<PlacedModule> modules, Combination combination, boolean up, ChainWriter chain) {
    List<ModuleLoad> seen = new java.util.ArrayList<>();
    for (PlacedModule module : modules) {
      ModuleLoad load = loads.of(module);
      if (!seen.contains(load)) {
        seen.add(load);
        write(new Case(module, combination, up), chain);
      }
    }
  }
}

package clampwise.takeoff;

import clampwise.calc.Snap;
import clampwise.calc.takeoff.RailRules;
import clampwise.calc.takeoff.RailRun;
import clampwise.catalogue.Limits;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.takeoff.Railed.OnRails;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lays rails along the eave under the modules of a layout. */
final class RailPlan {

  private final RailRules rules;
  private final double neighboursWithinM;
  private final PartKinds kinds;

  private RailPlan(Layout layout, Limits rules, Limits limits) {
    this.rules =
        new RailRules(
            (int) rules.get("rails-per-row").si(),
            rules.get("rail-span-most").si(),
            rules.get("rail-cantilever-most").si(),
            rules.get("rail-past-modules").si(),
            rules.get("rail-stock").si());
    this.neighboursWithinM = limits.get("module-neighbour-within").si();
    this.kinds = PartKinds.of(layout);
  }

  static Railed of(Layout layout, Limits rules, Limits limits) {
    RailPlan plan = new RailPlan(layout, rules, limits);
    List<OnRails> runs = new ArrayList<>();
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        plan.lay(plane, field, runs);
      }
    }
    return new Railed(runs, (int) rules.get("rail-lugs-per-run").si());
  }

  private void lay(PlaneLayout plane, FieldLayout field, List<OnRails> runs) {
    RailRules here =
        plane.panel().flatMap(Panel::pitch).map(Length::m).map(rules::atSeams).orElse(rules);
    String name = field.field().attachment().map(Text::value).orElse("");
    Part attachment = new Part(kinds.attachment(name), name);
    for (List<PlacedModule> row : rows(field)) {
      split(row)
          .forEach(run -> runs.add(new OnRails(new RailRun(run.size(), m(run), here), attachment)));
    }
  }

  /** Modules whose lower sides are at one height. */
  private static Iterable<List<PlacedModule>> rows(FieldLayout field) {
    Map<Double, List<PlacedModule>> rows = new TreeMap<>();
    for (PlacedModule module : field.modules()) {
      rows.computeIfAbsent(Snap.m(module.bottomM()), up -> new ArrayList<>()).add(module);
    }
    return rows.values();
  }

  /** A gap wider than neighbours have ends a run. */
  private List<List<PlacedModule>> split(List<PlacedModule> row) {
    row.sort(Comparator.comparingDouble(PlacedModule::leftM));
    List<List<PlacedModule>> runs = new ArrayList<>();
    double endM = Double.NEGATIVE_INFINITY;
    for (PlacedModule module : row) {
      if (module.leftM() - endM > neighboursWithinM) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(module);
      endM = module.rightM();
    }
    return runs;
  }

  private static double m(List<PlacedModule> run) {
    return Snap.m(run.get(run.size() - 1).rightM() - run.get(0).leftM());
  }
}

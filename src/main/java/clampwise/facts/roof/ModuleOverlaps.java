package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Looks for modules that lie over one another, in one field and across fields of a plane. */
final class ModuleOverlaps implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    layout.planes().forEach(plane -> ask(plane, answers));
  }

  private static void ask(PlaneLayout plane, Answers answers) {
    ModuleIndex index = ModuleIndex.of(plane);
    Map<String, Integer> order = order(plane);
    for (FieldLayout field : plane.fields()) {
      int clear = 0;
      for (PlacedModule module : field.modules()) {
        Optional<PlacedModule> other = worst(index, order, module);
        other.ifPresent(found -> answers.add(fact(field, module, found)));
        clear += other.isEmpty() ? 1 : 0;
      }
      clear(field, clear, answers);
    }
  }

  private static Map<String, Integer> order(PlaneLayout plane) {
    Map<String, Integer> order = new HashMap<>();
    plane.fields().stream()
        .flatMap(field -> field.modules().stream())
        .forEach(module -> order.put(module.name(), order.size()));
    return order;
  }

  /** The module placed before this one that it covers most; each pair is met once. */
  private static Optional<PlacedModule> worst(
      ModuleIndex index, Map<String, Integer> order, PlacedModule module) {
    return index.overlapping(module).stream()
        .filter(other -> place(order, other) < place(order, module))
        .max(Comparator.comparingDouble(other -> overlapM(module, other)));
  }

  private static int place(Map<String, Integer> order, PlacedModule module) {
    return order.getOrDefault(module.name(), 0);
  }

  private static double overlapM(PlacedModule one, PlacedModule other) {
    double alongM = Math.min(one.rightM(), other.rightM()) - Math.max(one.leftM(), other.leftM());
    double upM = Math.min(one.topM(), other.topM()) - Math.max(one.bottomM(), other.bottomM());
    return Snap.m(Math.min(alongM, upM));
  }

  private static void clear(FieldLayout field, int count, Answers answers) {
    Subject rest = RoofSubjects.field(field).part("modules that lie over no other");
    if (count > 0) {
      String modules = count + " modules";
      answers.add(
          new ModuleOverlap(
              rest, rest, field.at(), Shown.small(Shown.of(field)), modules, "none", 0, 0));
    }
  }

  private static ModuleOverlap fact(FieldLayout field, PlacedModule module, PlacedModule other) {
    return new ModuleOverlap(
        RoofSubjects.module(module).part("over " + other.name()),
        RoofSubjects.field(field).part("over " + other.field()),
        module.at(),
        Shown.small(Shown.of(field)),
        module.name(),
        other.name(),
        overlapM(module, other),
        0);
  }
}

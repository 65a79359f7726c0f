package clampwise.plan;

import clampwise.facts.Fact;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.loads.ModuleUse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What there is to say about each module. */
final class ModuleWords {

  private final Map<String, ModuleUse> uses = new HashMap<>();

  ModuleWords(List<Fact> facts) {
    for (Fact fact : facts) {
      if (fact instanceof ModuleUse use) {
        uses.merge(use.module(), use, (one, other) -> share(other) > share(one) ? other : one);
      }
    }
  }

  private static double share(ModuleUse use) {
    return use.demandPa() / use.ratedPa();
  }

  /** Name, type and the share of the design rating that is used, where that is known. */
  String of(PlacedModule module) {
    String text = module.name() + ", " + module.typeName();
    ModuleUse use = uses.get(module.name());
    return use == null
        ? text
        : text
            + ", uses "
            + Math.round(100 * share(use))
            + " % of its design rating "
            + use.direction()
            + " in zone "
            + use.zone();
  }
}

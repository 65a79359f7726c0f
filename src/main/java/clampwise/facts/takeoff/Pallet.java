package clampwise.facts.takeoff;

import clampwise.calc.Snap;
import clampwise.job.Count;
import clampwise.job.ModuleType;
import clampwise.job.Quantity.Mass;
import clampwise.job.Takeoff.Staging;
import clampwise.takeoff.Part;
import clampwise.takeoff.PartKind;
import java.util.Map;
import java.util.Optional;

/**
 * The heaviest pallet that is set on the roof.
 *
 * @param massKg its mass, with the modules [kg]
 * @param areaM2 the area that it covers [m²]
 */
record Pallet(int modules, double massKg, double areaM2) {

  /** Why its mass is not known, if it is not. */
  static Optional<String> unknown(TakeoffAsked asked) {
    Optional<String> unknown = asked.counts().unknown(PartKind.MODULE);
    if (unknown.isPresent()) {
      return unknown;
    }
    for (Part part : asked.counts().parts().keySet()) {
      if (part.kind() == PartKind.MODULE && type(asked, part).mass().isEmpty()) {
        return Optional.of("the mass of " + part + " is not given");
      }
    }
    return Optional.empty();
  }

  /** A pallet of the heaviest modules, whose masses have to be known. */
  static Pallet fullest(TakeoffAsked asked, Staging staging) {
    Pallet heaviest = new Pallet(0, 0, 1);
    int most = modules(asked, staging);
    for (Map.Entry<Part, Integer> part : asked.counts().parts().entrySet()) {
      if (part.getKey().kind() == PartKind.MODULE) {
        int modules = Math.min(most, part.getValue());
        Pallet pallet = of(type(asked, part.getKey()), modules, asked);
        heaviest = pallet.massKg > heaviest.massKg ? pallet : heaviest;
      }
    }
    return heaviest;
  }

  private static Pallet of(ModuleType type, int modules, TakeoffAsked asked) {
    Mass each = type.mass().orElseThrow();
    double massKg = modules * each.kg() + asked.rules().get("pallet-mass").si();
    double areaM2 = type.length().m() * type.width().m();
    return new Pallet(modules, Snap.m(massKg), areaM2);
  }

  /** Where nobody says how they are packed, the fullest pallet decides. */
  private static int modules(TakeoffAsked asked, Staging staging) {
    return staging
        .modules()
        .or(() -> asked.takeoff().modulesPerPallet())
        .map(Count::value)
        .orElseGet(() -> (int) asked.rules().get("modules-per-pallet-most").si());
  }

  private static ModuleType type(TakeoffAsked asked, Part part) {
    return asked
        .layout()
        .catalogue()
        .with(asked.layout().job())
        .modules()
        .find(part.name())
        .orElseThrow();
  }
}

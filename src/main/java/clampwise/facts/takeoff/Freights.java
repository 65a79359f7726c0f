package clampwise.facts.takeoff;

import clampwise.calc.Snap;
import clampwise.calc.takeoff.WholeNumbers;
import clampwise.finding.Subject;
import clampwise.job.Count;
import clampwise.job.Quantity.Mass;
import clampwise.job.Takeoff.Freight;
import clampwise.takeoff.Part;
import clampwise.takeoff.PartKind;
import clampwise.takeoff.PartMasses;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/** Asks whether the freight of the quotation is that of the drawing. */
final class Freights {

  private static final Subject FREIGHT = TakeoffAsked.TAKEOFF.part("freight");

  private Freights() {}

  static void ask(TakeoffAsked asked) {
    Optional<String> unknown =
        asked.isLost("freight")
            ? Optional.of("the freight could not be read")
            : asked.counts().unknown(PartKind.MODULE);
    Optional<Count> pallets = asked.takeoff().freight().flatMap(Freight::pallets);
    if (unknown.isPresent() || pallets.isEmpty()) {
      String reason = unknown.orElse("the pallets are not given (takeoff: freight: pallets)");
      asked.missing(PalletCount.class, FREIGHT.part("pallets"), reason);
    } else {
      asked.answers().add(pallets(asked, pallets.get()));
    }
    Optional<Mass> mass = asked.takeoff().freight().flatMap(Freight::mass);
    if (unknown.isPresent() || mass.isEmpty()) {
      String reason = unknown.orElse("the mass is not given (takeoff: freight: mass)");
      asked.missing(FreightMass.class, FREIGHT.part("mass"), reason);
    } else {
      askMass(asked, mass.get());
    }
  }

  /** Types of modules do not share pallets. */
  private static PalletCount pallets(TakeoffAsked asked, Count stated) {
    Optional<Count> given = asked.takeoff().modulesPerPallet().filter(count -> count.value() > 0);
    int inEach =
        given
            .map(Count::value)
            .orElseGet(() -> (int) asked.rules().get("modules-per-pallet-most").si());
    int least = 0;
    for (Map.Entry<Part, Integer> part : asked.counts().parts().entrySet()) {
      if (part.getKey().kind() == PartKind.MODULE) {
        least += WholeNumbers.packs(part.getValue(), inEach);
      }
    }
    return new PalletCount(
        FREIGHT.part("pallets"),
        stated.at(),
        Unit.NUMBER,
        asked.counts().of(PartKind.MODULE),
        stated.value(),
        least,
        inEach + (given.isPresent() ? "" : ", the most that is usual"));
  }

  /** What is known to be on it is the least that it weighs. */
  private static void askMass(TakeoffAsked asked, Mass stated) {
    PartMasses masses = PartMasses.of(asked.layout());
    Optional<String> unknown =
        asked
            .counts()
            .unknown(PartKind.END_CLAMP)
            .or(() -> asked.counts().unknown(PartKind.JUMPER));
    double countedKg = 0;
    for (Map.Entry<Part, Integer> part : asked.counts().parts().entrySet()) {
      Optional<Double> eachKg = masses.eachKg(part.getKey());
      countedKg += part.getValue() * eachKg.orElse(0.0);
      if (eachKg.isEmpty() && unknown.isEmpty()) {
        unknown = Optional.of("the mass of " + part.getKey() + " is not given");
      }
    }
    double leastKg = Snap.m(countedKg);
    if (unknown.isPresent() && Snap.m(stated.kg()) >= leastKg) {
      asked.missing(FreightMass.class, FREIGHT.part("mass"), unknown.get(), stated.at());
    } else {
      String atLeast = unknown.isPresent() ? "at least " : "";
      asked.answers().add(mass(stated, leastKg, atLeast));
    }
  }

  private static FreightMass mass(Mass stated, double countedKg, String atLeast) {
    return new FreightMass(
        FREIGHT.part("mass"), stated.at(), stated.unit(), Snap.m(stated.kg()), countedKg, atLeast);
  }
}

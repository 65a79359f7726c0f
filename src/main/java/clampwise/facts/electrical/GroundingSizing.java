package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.electrical.GroundingSizes;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.job.Choice;
import clampwise.job.Circuit.ConductorMetal;
import clampwise.job.Circuit.Grounding;
import clampwise.job.Circuit.Kind;
import clampwise.job.ElectricalCode;
import clampwise.source.Article;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.Optional;

/** Works out how large the grounding conductor of a circuit has to be. */
record GroundingSizing(CircuitCase circuit, Grounding grounding) {

  /**
   * A least size.
   *
   * @param m2 cross-section [m²]
   * @param by what it is sized to, in words
   * @param from where it comes from
   */
  record Least(double m2, String by, Limit from) {}

  Outcome<Least> least() {
    if (grounding.metal().isEmpty()) {
      return new NotApplicable<>(
          circuit.lacks("the metal of the grounding conductor", "grounding", "metal"));
    }
    return wiring().code().then(code -> code.isNec() ? byDevice() : byBond(code));
  }

  private Outcome<Least> byDevice() {
    return circuit
        .deviceA()
        .then(
            deviceA ->
                new GroundingSizes(table())
                    .least(deviceA, metal(), work())
                    .then(t -> by(deviceA, t)));
  }

  /** The conductor need not be larger than those of its circuit. */
  private Outcome<Least> by(double deviceA, Term size) {
    String amperes = QuantityPrint.text(deviceA, Units.AMPERE);
    String by =
        circuit.isUnfused()
            ? "the " + amperes + " assumed for a circuit without a device"
            : Article.with(amperes) + " device";
    Limit table =
        new Limit(
            table().key(),
            size.si(),
            Units.AWG,
            "nec",
            table().source().edition(),
            table().source().clause(),
            table().source().obtained(),
            table().source().validity());
    if (circuit.isLost("conductor")) {
      return new NotApplicable<>(circuit.lacks("the size of the conductors", "conductor"));
    }
    double ownM2 = own().orElse(size.si());
    double smallestM2 = wiring().limits().get("grounding-conductor-smallest").si();
    double leastM2 = Math.min(size.si(), Math.max(ownM2, smallestM2));
    String whose = leastM2 < size.si() ? by + ", and no larger than the circuit's own" : by;
    return new Result<>(new Least(leastM2, whose, table));
  }

  private Optional<Double> own() {
    return isCopper() ? circuit.circuit().conductor().map(wire -> wire.m2()) : Optional.empty();
  }

  private boolean isCopper() {
    return grounding.metal().filter(m -> m.value() == ConductorMetal.COPPER).isPresent();
  }

  private Outcome<Least> byBond(ElectricalCode code) {
    if (!circuit.is(Kind.DC) || !isCopper()) {
      String what = "sizes under " + Choice.word(code) + " stand in the tables for copper bonds of";
      return new NotApplicable<>(what + " dc circuits only");
    }
    CodeLimits sizes = new CodeLimits(wiring().tables().get("bonding-conductors"), code);
    Limit usual = sizes.find("usual", Units.SQUARE_MILLIMETRE).orElseThrow();
    Limit most = sizes.find("lightning", Units.SQUARE_MILLIMETRE).orElseThrow();
    return wiring()
        .electrical()
        .lightningCurrent()
        .<Outcome<Least>>map(flag -> new Result<>(bond(flag.value() ? most : usual, flag.value())))
        .orElseGet(() -> undecided(usual, most));
  }

  /** Without a word on lightning, what is too small for either case or large enough for both. */
  private Outcome<Least> undecided(Limit usual, Limit most) {
    double sizeM2 = grounding.size().map(wire -> wire.m2()).orElse(0.0);
    if (sizeM2 < usual.si()) {
      return new Result<>(bond(usual, false));
    }
    return sizeM2 >= most.si()
        ? new Result<>(bond(most, true))
        : new NotApplicable<>(
            wiring().lacks("whether the bonding may carry lightning current", "lightning-current"));
  }

  private static Least bond(Limit limit, boolean lightning) {
    return new Least(limit.si(), lightning ? "lightning current" : "a bond of frames", limit);
  }

  private String metal() {
    return Choice.word(grounding.metal().orElseThrow().value());
  }

  private Table table() {
    return wiring().tables().get("grounding-conductors");
  }

  private static Work work() {
    return new Work(Measure.METRIC);
  }

  private Wiring wiring() {
    return circuit.wiring();
  }
}

package clampwise.facts.electrical;

import clampwise.calc.electrical.GroundingSizes;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.electrical.GroundingSizing.Least;
import clampwise.job.Circuit.Kind;
import clampwise.job.Quantity.WireSize;
import clampwise.units.Units;
import java.util.Map;
import java.util.Optional;

/** Asks of ac circuits raised against voltage drop whether the grounding conductor was, too. */
final class RaisedGroundings {

  private RaisedGroundings() {}

  static void ask(CircuitCase circuit, WireSize size, Least least) {
    Optional<WireSize> chosen = circuit.circuit().conductor();
    Optional<WireSize> needed = circuit.circuit().conductorNeeded();
    if (circuit.is(Kind.AC) && chosen.isPresent() && needed.isPresent()) {
      circuit
          .wiring()
          .answers()
          .add(fact(circuit, size, least, new Raise(chosen.get(), needed.get())));
    }
  }

  private record Raise(WireSize chosen, WireSize needed) {}

  private static RaisedGrounding fact(
      CircuitCase circuit, WireSize size, Least least, Raise raise) {
    boolean american = size.unit().equals(Units.AWG) || size.unit().equals(Units.KCMIL);
    Work work = new Work(american ? Measure.IMPERIAL : Measure.METRIC);
    Term table = GroundingSizes.wire("S", "grounding conductor of the circuit", least.m2());
    Term needed = GroundingSizes.wire("A_n", "conductors needed", raise.needed.m2());
    Term chosen = GroundingSizes.wire("A_c", "conductors chosen", raise.chosen.m2());
    double leastM2 = GroundingSizes.raised(table, needed, chosen, work).si();
    return new RaisedGrounding(
        circuit.subject().part("grounding conductor"),
        size.at(),
        size.unit(),
        Map.of("conductorWireM2", raise.chosen.unit(), "neededWireM2", raise.needed.unit()),
        circuit.name().value(),
        raise.chosen.m2(),
        raise.needed.m2(),
        WireSizes.snapped(size.m2(), leastM2),
        leastM2,
        WireSizes.next(circuit.wiring().tables().get("grounding-conductors"), leastM2, size.unit()),
        ShownWork.of("Grounding conductor of circuit " + circuit.name(), work),
        Optional.of(least.from()));
  }
}

package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.electrical.GroundingSizing.Least;
import clampwise.job.Choice;
import clampwise.job.Circuit.Grounding;
import clampwise.job.Circuit.Kind;
import clampwise.job.Circuit.Path;
import clampwise.job.Circuit.Route;
import clampwise.job.ElectricalCode;
import clampwise.job.Quantity.WireSize;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks of each grounding conductor what it is made of, how large it is and where it runs. */
record Groundings(CircuitCase circuit, Grounding grounding) {

  static void ask(Wiring wiring) {
    if (wiring.electrical().circuits().isEmpty()) {
      String reason = wiring.lacks("the circuits", "circuits");
      wiring.missing(GroundingSize.class, Wiring.ELECTRICAL.part("circuits"), reason);
    }
    CircuitCase.each(wiring, Groundings::ask);
  }

  private static void ask(CircuitCase circuit) {
    if (circuit.grounding().isEmpty()) {
      String reason = circuit.lacks("the grounding conductor", "grounding");
      missing(circuit, GroundingSize.class, reason);
    } else {
      new Groundings(circuit, circuit.grounding().get()).ask();
    }
  }

  private void ask() {
    if (grounding.path().isEmpty()) {
      String reason = circuit.lacks("what serves as grounding conductor", "grounding", "path");
      missing(circuit, GroundPathMade.class, reason);
    } else {
      circuit.wiring().answers().add(path(grounding.path().get()));
    }
    if (grounding.path().filter(path -> path.value() == Path.ROOF).isEmpty()) {
      askSize();
      askDrop();
    }
  }

  private GroundPathMade path(Choice<Path> path) {
    return new GroundPathMade(
        circuit.subject().part("grounding conductor"),
        path.at(),
        Unit.NUMBER,
        circuit.name().value(),
        path.value() == Path.ROOF);
  }

  private void askDrop() {
    if (circuit.is(Kind.DC) && grounding.raisedForDrop().isPresent() && isNec()) {
      circuit
          .wiring()
          .answers()
          .add(
              new DropOnDc(
                  circuit.subject().part("grounding conductor"),
                  grounding.raisedForDrop().get().at(),
                  Unit.NUMBER,
                  circuit.name().value(),
                  grounding.raisedForDrop().get().value()));
    }
  }

  private boolean isNec() {
    return circuit.wiring().code().result().filter(ElectricalCode::isNec).isPresent();
  }

  private void askSize() {
    Outcome<Least> least = new GroundingSizing(circuit, grounding).least();
    Optional<WireSize> size = grounding.size();
    if (size.isEmpty()) {
      String what = "the size of the grounding conductor";
      missing(circuit, GroundingSize.class, circuit.lacks(what, "grounding", "size"));
    } else if (least instanceof NotApplicable<Least> unknown) {
      missing(circuit, GroundingSize.class, unknown.reason());
    } else {
      askSize(size.get(), least.result().orElseThrow());
    }
  }

  /** What is too small for its circuit is not found again for its place or its length. */
  private void askSize(WireSize size, Least least) {
    GroundingSize fact = fact(size, least);
    circuit.wiring().answers().add(fact);
    if (fact.sizeWireM2() >= fact.leastWireM2() && isNec()) {
      askExposure(size);
      RaisedGroundings.ask(circuit, size, least);
    }
  }

  private GroundingSize fact(WireSize size, Least least) {
    Limit exposed = exposedLeast();
    boolean open = route().filter(Route.EXPOSED::equals).isPresent() && isNec();
    double neededM2 = open ? Math.max(exposed.si(), least.m2()) : least.m2();
    return new GroundingSize(
        circuit.subject().part("grounding conductor"),
        size.at(),
        size.unit(),
        circuit.name().value(),
        grounding.metal().map(Choice::toString).orElse(""),
        WireSizes.snapped(size.m2(), least.m2()),
        least.m2(),
        least.by(),
        WireSizes.next(
            circuit.wiring().tables().get("grounding-conductors"), neededM2, size.unit()),
        Optional.of(least.from()));
  }

  private Optional<Route> route() {
    return grounding.route().map(Choice::value);
  }

  private Limit exposedLeast() {
    return circuit.wiring().limits().get("exposed-grounding-conductor-least");
  }

  private void askExposure(WireSize size) {
    if (route().isEmpty()) {
      String reason = circuit.lacks("where the grounding conductor runs", "grounding", "route");
      missing(circuit, GroundingExposure.class, reason);
      return;
    }
    Limit least = exposedLeast();
    circuit
        .wiring()
        .answers()
        .add(
            new GroundingExposure(
                circuit.subject().part("grounding conductor"),
                size.at(),
                size.unit(),
                circuit.name().value(),
                route().get() == Route.EXPOSED,
                WireSizes.snapped(size.m2(), least.si()),
                least.si(),
                Optional.of(least)));
  }

  private static void missing(CircuitCase circuit, Class<? extends Fact> type, String reason) {
    circuit
        .wiring()
        .missing(type, circuit.subject().part("grounding conductor"), reason, circuit.at());
  }
}

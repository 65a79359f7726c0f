package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.facts.Fact;
import clampwise.job.Circuit.Kind;
import clampwise.job.ElectricalCode;
import clampwise.job.Quantity.Current;
import clampwise.source.Span;
import clampwise.units.Units;
import java.util.Optional;

/** Holds the overcurrent devices of dc circuits against their strings, and asks where none is. */
record Devices(CircuitCase circuit) {

  static void ask(Wiring wiring) {
    CircuitCase.each(wiring, circuit -> new Devices(circuit).ask());
  }

  private void ask() {
    if (circuit.circuit().kind().isEmpty()) {
      missing(DeviceRating.class, circuit.lacks("whether dc or ac is the current", "kind"));
    } else if (circuit.is(Kind.DC)) {
      askDevice();
      askReverse();
    }
  }

  private void askDevice() {
    Optional<Current> device = circuit.circuit().overcurrent();
    if (device.isPresent()) {
      askRating(device.get());
      if (circuit.inParallel() == 1) {
        askSeriesFuse(device.get());
      }
    } else if (circuit.isUnfused() && !circuit.isLost("overcurrent")) {
      askUnfused();
    } else {
      missing(DeviceRating.class, circuit.lacks("the overcurrent device", "overcurrent"));
    }
  }

  private void askRating(Current device) {
    Outcome<Double> least = circuit.leastDeviceA();
    if (least instanceof NotApplicable<Double> unknown) {
      missing(DeviceRating.class, unknown.reason());
      return;
    }
    add(
        new DeviceRating(
            circuit.subject().part("device"),
            device.at(),
            Units.AMPERE,
            circuit.name().value(),
            circuit.inParallel(),
            circuit.isc().result().map(Current::a).orElse(0.0),
            device.a(),
            least.result().orElseThrow(),
            Optional.of(circuit.over())));
  }

  private void askSeriesFuse(Current device) {
    Outcome<Current> most = circuit.seriesFuse();
    if (most instanceof NotApplicable<Current> unknown) {
      missing(SeriesFuse.class, unknown.reason());
      return;
    }
    add(
        new SeriesFuse(
            circuit.subject().part("device"),
            device.at(),
            Units.AMPERE,
            circuit.name().value(),
            module(),
            device.a(),
            most.result().orElseThrow().a()));
  }

  private String module() {
    return circuit.string().flatMap(ColdCase::moduleName).orElse("");
  }

  private void askUnfused() {
    if (circuit.wiring().code().result().filter(ElectricalCode::isNec).isEmpty()) {
      return;
    }
    Outcome<Double> least = circuit.leastDeviceA();
    if (least instanceof NotApplicable<Double> unknown) {
      missing(UnfusedCircuit.class, unknown.reason());
      return;
    }
    Optional<Current> stated = circuit.circuit().assumedDevice();
    if (stated.isEmpty() && circuit.isLost("assumed-device")) {
      missing(UnfusedCircuit.class, circuit.lacks("the device assumed", "assumed-device"));
      return;
    }
    Span fused = circuit.circuit().fused().orElseThrow().at();
    add(
        new UnfusedCircuit(
            circuit.subject().part("device"),
            stated.map(Current::at).orElse(fused),
            Units.AMPERE,
            circuit.name().value(),
            stated.isPresent(),
            stated.map(Current::a).orElse(0.0),
            least.result().orElseThrow(),
            Optional.of(circuit.over())));
  }

  private void askReverse() {
    if (circuit.inParallel() < 2) {
      return;
    }
    Outcome<Current> isc = circuit.isc();
    Outcome<Current> most = circuit.seriesFuse();
    if (isc instanceof NotApplicable<Current> unknown) {
      missing(ReverseCurrent.class, unknown.reason());
    } else if (most instanceof NotApplicable<Current> unknown) {
      missing(ReverseCurrent.class, unknown.reason());
    } else if (circuit.wiring().isLost("circuits")) {
      missing(ReverseCurrent.class, "not all circuits could be read");
    } else {
      add(reverse(isc.result().orElseThrow().a(), most.result().orElseThrow().a()));
    }
  }

  private ReverseCurrent reverse(double iscA, double mostA) {
    return new ReverseCurrent(
        circuit.subject().part("strings in parallel"),
        circuit.circuit().inParallel().orElseThrow().at(),
        Units.AMPERE,
        circuit.name().value(),
        circuit.inParallel(),
        isEachFused(),
        StringVoltages.snapped((circuit.inParallel() - 1) * iscA),
        module(),
        mostA);
  }

  /** Whether a circuit of one of these strings has a device. */
  private boolean isEachFused() {
    String string = circuit.circuit().string().map(Object::toString).orElse("");
    return circuit.wiring().electrical().circuits().all().stream()
        .map(item -> new CircuitCase(circuit.wiring(), item.name(), item.value()))
        .filter(other -> other.inParallel() == 1 && other.isFused())
        .anyMatch(
            other -> other.circuit().string().map(Object::toString).orElse("").equals(string));
  }

  private void add(Fact fact) {
    circuit.wiring().answers().add(fact);
  }

  private void missing(Class<? extends Fact> type, String reason) {
    circuit.wiring().missing(type, circuit.subject().part("device"), reason, circuit.at());
  }
}

package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Circuit;
import clampwise.job.Circuit.Grounding;
import clampwise.job.Circuit.Kind;
import clampwise.job.Count;
import clampwise.job.Electrical.PvString;
import clampwise.job.Flag;
import clampwise.job.ModuleElectrics;
import clampwise.job.Named;
import clampwise.job.Quantity.Current;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A circuit with what its protection depends on.
 *
 * @param name its name
 * @param circuit what the designer wrote
 */
record CircuitCase(Wiring wiring, Text name, Circuit circuit) {

  static void each(Wiring wiring, Consumer<CircuitCase> question) {
    wiring.electrical().circuits().all().stream()
        .map(item -> new CircuitCase(wiring, item.name(), item.value()))
        .forEach(question);
  }

  Subject subject() {
    return Wiring.ELECTRICAL.part("circuit " + name);
  }

  Span at() {
    return name.at();
  }

  boolean is(Kind kind) {
    return circuit.kind().filter(own -> own.value() == kind).isPresent();
  }

  Optional<Grounding> grounding() {
    return circuit.grounding();
  }

  /** Says that something of the circuit is not given. */
  String lacks(String what, String... path) {
    String[] whole = new String[path.length + 2];
    whole[0] = "circuits";
    whole[1] = name.value();
    System.arraycopy(path, 0, whole, 2, path.length);
    return wiring.lacks(what + " of circuit " + name, whole);
  }

  /** Whether a key is written but could not be read. */
  boolean isLost(String key) {
    return wiring.isLost("circuits", name.value(), key);
  }

  int inParallel() {
    return circuit.inParallel().map(Count::value).orElse(1);
  }

  boolean isUnfused() {
    return circuit.overcurrent().isEmpty() && circuit.fused().filter(f -> !f.value()).isPresent();
  }

  boolean isFused() {
    return circuit.overcurrent().isPresent() || circuit.fused().filter(Flag::value).isPresent();
  }

  /** The string that feeds it. */
  Optional<ColdCase> string() {
    return circuit.string().flatMap(this::find).map(item -> ColdCase.of(wiring, item));
  }

  private Optional<Named.Item<PvString>> find(Text string) {
    return Optional.ofNullable(wiring.electrical().strings().items().get(string.value()));
  }

  /** Short-circuit current of one string that feeds it. */
  Outcome<Current> isc() {
    if (isLost("in-parallel")) {
      return new NotApplicable<>(lacks("the number of strings in parallel", "in-parallel"));
    }
    return rating("the short-circuit current", "isc", ModuleElectrics::isc);
  }

  /** The largest series fuse of the modules that feed it. */
  Outcome<Current> seriesFuse() {
    return rating(
        "the largest series fuse", "series-fuse-at-most", ModuleElectrics::seriesFuseAtMost);
  }

  private interface Rating {
    Optional<Current> of(ModuleElectrics electrics);
  }

  private Outcome<Current> rating(String what, String key, Rating rating) {
    Optional<ColdCase> string = string();
    if (string.isEmpty()) {
      return new NotApplicable<>(stringUnknown());
    }
    return string
        .get()
        .electrics()
        .flatMap(rating::of)
        .<Outcome<Current>>map(Result::new)
        .orElseGet(() -> new NotApplicable<>(string.get().lacks(what, key)));
  }

  private String stringUnknown() {
    return circuit
        .string()
        .map(text -> wiring.lacks("string " + text, "strings", text.value()))
        .orElseGet(() -> lacks("the string", "string"));
  }

  /** The least rating of a device in the circuit [A]. */
  Outcome<Double> leastDeviceA() {
    return isc()
        .then(isc -> new Result<>(StringVoltages.snapped(over().si() * isc.a() * inParallel())));
  }

  Limit over() {
    return wiring.limits().get("assumed-device-over-current");
  }

  /** The rating that its grounding conductor is sized to [A]. */
  Outcome<Double> deviceA() {
    if (circuit.overcurrent().isPresent()) {
      return new Result<>(circuit.overcurrent().get().a());
    }
    return isUnfused()
        ? leastDeviceA()
        : new NotApplicable<>(lacks("the overcurrent device", "overcurrent"));
  }
}

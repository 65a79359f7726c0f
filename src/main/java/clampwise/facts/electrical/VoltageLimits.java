package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.catalogue.Limit;
import clampwise.job.Choice;
import clampwise.job.Electrical.Occupancy;
import clampwise.job.ElectricalCode;
import clampwise.job.ModuleElectrics;
import clampwise.job.Quantity.Voltage;
import clampwise.units.Units;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** All that limits the voltage of a string: its modules, the inverters, the building. */
record VoltageLimits(ColdCase string) {

  /** One of them. */
  record Bound(double v, String by, Optional<Limit> from) {}

  private List<Outcome<Bound>> all() {
    return List.of(ofBuilding(), ofInverters(), ofModules());
  }

  /** The least of those that are known. */
  Optional<Bound> least() {
    return all().stream()
        .flatMap(bound -> bound.result().stream())
        .min(Comparator.comparingDouble(Bound::v));
  }

  /** Why one of them is not known, if one is not. */
  Optional<String> unknown() {
    return all().stream().flatMap(VoltageLimits::reason).findFirst();
  }

  private static Stream<String> reason(Outcome<Bound> bound) {
    return bound instanceof NotApplicable<Bound> none ? Stream.of(none.reason()) : Stream.empty();
  }

  private Outcome<Bound> ofModules() {
    return bound(
        string.electrics().flatMap(ModuleElectrics::systemVoltageAtMost),
        "what " + string.moduleName().map(name -> "module " + name).orElse("the module") + " takes",
        string.lacks("the largest system voltage", "system-voltage-at-most"));
  }

  private Outcome<Bound> ofInverters() {
    return bound(
        wiring().electrical().inverterVoltageAtMost(),
        "what the inverters take",
        wiring().lacks("the highest voltage of the inverters", "inverter-voltage-at-most"));
  }

  private static Outcome<Bound> bound(Optional<Voltage> voltage, String by, String reason) {
    return voltage
        .<Outcome<Bound>>map(v -> new Result<>(new Bound(v.v(), by, Optional.empty())))
        .orElseGet(() -> new NotApplicable<>(reason));
  }

  private Outcome<Bound> ofBuilding() {
    Optional<Occupancy> occupancy = wiring().electrical().occupancy().map(Choice::value);
    return occupancy.isEmpty()
        ? new NotApplicable<>(wiring().lacks("the occupancy of the building", "occupancy"))
        : wiring().code().then(code -> ofBuilding(code, occupancy.get()));
  }

  private Outcome<Bound> ofBuilding(ElectricalCode code, Occupancy occupancy) {
    CodeLimits limits = new CodeLimits(wiring().tables().get("voltage-limits"), code);
    String by = occupancy == Occupancy.DWELLING ? "a dwelling allows" : "the building allows";
    return limits
        .find("voltage", Units.VOLT, row -> row.word("occupancy").equals(Choice.word(occupancy)))
        .<Outcome<Bound>>map(
            limit ->
                new Result<>(
                    new Bound(
                        limit.si(),
                        "what " + by + " under " + Choice.word(code),
                        Optional.of(limit))))
        .orElseGet(() -> new NotApplicable<>("the code sets no voltage for this building"));
  }

  private Wiring wiring() {
    return string.wiring();
  }
}

package clampwise.calculation;

import static clampwise.units.Dimension.CURRENT;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.TEMPERATURE;
import static clampwise.units.Dimension.TEMPERATURE_RATE;
import static clampwise.units.Dimension.VOLTAGE;
import static clampwise.units.Dimension.WIRE_SIZE;

import clampwise.calc.Outcome;
import clampwise.calc.electrical.CableClips;
import clampwise.calc.electrical.ColdFactor;
import clampwise.calc.electrical.ColdString;
import clampwise.calc.electrical.ConductorResistance;
import clampwise.calc.electrical.GroundingSizes;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.Tables;
import clampwise.catalogue.TablesReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Strings in the cold, grounding conductors, supports of cables. */
final class ElectricalCalculations {

  private final Tables tables;
  private final Limits limits;

  private ElectricalCalculations(Tables tables, Limits limits) {
    this.tables = tables;
    this.limits = limits;
  }

  static List<Calculation> all() {
    ElectricalCalculations all =
        new ElectricalCalculations(TablesReader.read("electrical.yaml"), LimitsReader.read());
    return List.of(all.coldString(), all.grounding(), all.resistance(), clips());
  }

  private Calculation coldString() {
    return new Calculation(
        "cold-string-voltage",
        "Open-circuit voltage of a string at the lowest temperature",
        "the maker's coefficient; without one crystalline silicon, "
            + "lowest temperature from 24 °C to -40 °C",
        List.of(
            Input.of("voc", "rated open-circuit voltage of a module", VOLTAGE, 1e-3),
            Input.of("coefficient", "maker's coefficient, else the table", TEMPERATURE_RATE, -0.01)
                .orNothing(),
            Input.of("lowest", "lowest expected ambient temperature", TEMPERATURE, -100.0, 150.0),
            Input.of("modules", "modules in series", NUMBER, 1.0, 1000.0).orNothing(),
            Input.of("limit", "highest voltage allowed", VOLTAGE, 1e-3).orNothing()),
        (given, work) ->
            factor(given, work)
                .then(factor -> new Outcome.Result<>(voltages(given, factor, work))));
  }

  private Outcome<Term> factor(Given given, Work work) {
    ColdFactor cold = new ColdFactor(given.number("lowest"));
    Table table = tables.get("voltage-factors");
    return given
        .find("coefficient")
        .map(si -> new Term("b", "change by temperature", si, TEMPERATURE_RATE))
        .<Outcome<Term>>map(rate -> new Outcome.Result<>(cold.byCoefficient(rate, work)))
        .orElseGet(() -> cold.byTable(table, work));
  }

  private static List<Term> voltages(Given given, Term factor, Work work) {
    Term voc = ColdString.volts("V_oc", "rated open-circuit voltage", given.number("voc"));
    Term each = ColdString.ofModule(voc, factor, work);
    List<Term> results = new ArrayList<>(List.of(each));
    given
        .find("modules")
        .map(n -> ColdString.ofString(each, (int) Math.round(n), work))
        .ifPresent(results::add);
    given
        .find("limit")
        .map(v -> ColdString.volts("V_lim", "highest voltage allowed", v))
        .map(limit -> ColdString.most(each, limit, work))
        .ifPresent(results::add);
    return results;
  }

  private Calculation grounding() {
    Table table = tables.get("grounding-conductors");
    Limit factor = limits.get("assumed-device-over-current");
    return new Calculation(
        "grounding-conductor",
        "Least size of an equipment grounding conductor, NEC",
        table.source().validity(),
        List.of(
            Input.of("device", "rating of the overcurrent device", CURRENT, 0.1).orNothing(),
            Input.of("short-circuit-current", "of what feeds a circuit without one", CURRENT, 0.1)
                .orNothing(),
            Input.word("metal", "metal of the conductor", "copper", "aluminium").unless("copper"),
            Input.word("route", "where it runs", "raceway", "exposed").unless("raceway"),
            Input.of("needed", "conductors that the circuit needs", WIRE_SIZE, 1e-7).orNothing(),
            Input.of("chosen", "conductors it has against voltage drop", WIRE_SIZE, 1e-7)
                .orNothing()),
        (given, work) ->
            device(given, factor, work)
                .then(
                    deviceA -> new GroundingSizes(table).least(deviceA, given.word("metal"), work))
                .then(size -> new Outcome.Result<>(List.of(largest(given, size, work)))));
  }

  private static Outcome<Double> device(Given given, Limit factor, Work work) {
    Optional<Double> device = given.find("device");
    if (device.isEmpty() && given.find("short-circuit-current").isEmpty()) {
      return new Outcome.NotApplicable<>("neither a device nor a short-circuit current is given");
    }
    return new Outcome.Result<>(
        device.orElseGet(
            () -> {
              double isc = given.number("short-circuit-current");
              Term current = new Term("I_sc", "short-circuit current", isc, CURRENT);
              return GroundingSizes.assumedDevice(current, factor.si(), factor.source(), work).si();
            }));
  }

  private Term largest(Given given, Term size, Work work) {
    Term raised = raised(given, size, work);
    if (!given.word("route").equals("exposed")) {
      return raised;
    }
    Limit least = limits.get("exposed-grounding-conductor-least");
    Term exposed = GroundingSizes.wire("S_e", "least size exposed", least.si());
    work.given(exposed, least.source());
    double si = Math.max(raised.si(), exposed.si());
    Term both = GroundingSizes.wire("S_c", "grounding conductor", si);
    String formula = "max(" + raised.symbol() + ",S_e)";
    work.write(new Line(both, formula, List.of(raised, exposed), least.source(), ""));
    return both;
  }

  private static Term raised(Given given, Term size, Work work) {
    Optional<Double> needed = given.find("needed");
    Optional<Double> chosen = given.find("chosen");
    if (needed.isEmpty() || chosen.isEmpty()) {
      return size;
    }
    Term has = GroundingSizes.wire("A_c", "conductors chosen", chosen.get());
    Term needs = GroundingSizes.wire("A_n", "conductors needed", needed.get());
    return GroundingSizes.raised(size, needs, has, work);
  }

  private Calculation resistance() {
    Table table = tables.get("conductors");
    return new Calculation(
        "conductor-resistance",
        "Resistance of a copper conductor",
        table.source().validity(),
        List.of(
            Input.of("size", "size of the conductor", WIRE_SIZE, 1e-7),
            Input.of("length", "length of the conductor", LENGTH, 0.0)),
        (given, work) ->
            new ConductorResistance(table)
                .of(given.number("size"), length("L", "length", given.number("length")), work)
                .then(Results::of));
  }

  private static Calculation clips() {
    return new Calculation(
        "cable-clips",
        "Least number of clips on runs of cable",
        "clips at even spacing",
        List.of(
            Input.of("length", "length of the runs", LENGTH, 0.0),
            Input.of("spacing", "widest spacing of the clips", LENGTH, 1e-3)),
        (given, work) ->
            Results.of(
                CableClips.least(
                    length("L", "length of the runs", given.number("length")),
                    length("s", "widest spacing", given.number("spacing")),
                    work)));
  }

  private static Term length(String symbol, String meaning, double m) {
    return Term.length(symbol, meaning, m);
  }
}

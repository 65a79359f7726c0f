package clampwise.facts.electrical;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.electrical.ColdFactor;
import clampwise.calc.electrical.ColdString;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.finding.Subject;
import clampwise.job.Electrical.PvString;
import clampwise.job.ElectricalCode;
import clampwise.job.Field;
import clampwise.job.ModuleElectrics;
import clampwise.job.ModuleType;
import clampwise.job.Named;
import clampwise.job.Quantity.Temperature;
import clampwise.job.Quantity.TemperatureRate;
import clampwise.job.Quantity.Voltage;
import clampwise.job.Site;
import clampwise.job.Text;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.Optional;

/**
 * A string with all that its voltage in the cold depends on.
 *
 * @param name its name
 * @param string what the designer wrote
 */
record ColdCase(Wiring wiring, Text name, PvString string) {

  /**
   * A voltage in the cold with its work.
   *
   * @param each voltage of one module [V]
   * @param whole voltage of the string [V]
   * @param method how the cold was taken, in words
   */
  record Cold(Term each, Term whole, String method, Work work) {}

  static ColdCase of(Wiring wiring, Named.Item<PvString> item) {
    return new ColdCase(wiring, item.name(), item.value());
  }

  Subject subject() {
    return Wiring.ELECTRICAL.part("string " + name);
  }

  /** Name of the module type. */
  Optional<String> moduleName() {
    return string
        .module()
        .or(() -> string.field().flatMap(f -> fields().find(f.value())).map(Field::module))
        .map(Text::value);
  }

  private Named<Field> fields() {
    return wiring.job().fields();
  }

  Optional<ModuleElectrics> electrics() {
    return moduleName()
        .flatMap(module -> wiring.catalogue().modules().find(module))
        .flatMap(ModuleType::electrical);
  }

  /** Says that a rating of the module is not given. */
  String lacks(String what, String key) {
    return moduleName()
        .map(module -> ofModule(what + " of module " + module, module, key))
        .orElseGet(this::moduleUnknown);
  }

  private boolean isLost(String key) {
    Optional<String> module = moduleName();
    return module.isPresent()
        && wiring.unreadable().touches("modules", module.get(), "electrical", key);
  }

  private String moduleUnknown() {
    String module = "the module of string " + name;
    boolean fieldLost =
        string.field().filter(f -> wiring.unreadable().touches("fields", f.value())).isPresent();
    return fieldLost || wiring.isLost("strings", name.value())
        ? module + " could not be read"
        : wiring.lacks(module, "strings", name.value(), "module");
  }

  private String ofModule(String what, String module, String key) {
    return wiring.unreadable().missing(what, "modules", module, "electrical", key);
  }

  Optional<Temperature> lowest() {
    return wiring.job().site().flatMap(Site::lowestTemperature);
  }

  String lowestInWords() {
    return lowest().map(t -> QuantityPrint.text(t.si(), t.unit())).orElse("");
  }

  /** The voltage in the cold. */
  Outcome<Cold> cold() {
    Optional<Voltage> voc = electrics().flatMap(ModuleElectrics::voc);
    if (lowest().isEmpty()) {
      return new NotApplicable<>(
          wiring
              .unreadable()
              .missing("the lowest temperature of the site", "site", "lowest-temperature"));
    }
    if (voc.isEmpty()) {
      return new NotApplicable<>(lacks("the open-circuit voltage", "voc"));
    }
    Work work = new Work(measure());
    return factor(work).then(factor -> new Result<>(cold(voc.get(), factor, work)));
  }

  private Measure measure() {
    boolean imperial = lowest().filter(t -> t.unit().equals(Units.FAHRENHEIT)).isPresent();
    return imperial ? Measure.IMPERIAL : Measure.METRIC;
  }

  private record Factor(Term term, String method) {}

  private Cold cold(Voltage voc, Factor factor, Work work) {
    Term rated = ColdString.volts("V_oc", "rated open-circuit voltage", voc.v());
    Term each = ColdString.ofModule(rated, factor.term, work);
    Term whole = ColdString.ofString(each, string.inSeries().value(), work);
    return new Cold(each, whole, factor.method, work);
  }

  /** The maker's coefficient goes before the table. */
  private Outcome<Factor> factor(Work work) {
    ColdFactor cold = new ColdFactor(lowest().orElseThrow().celsius());
    Optional<TemperatureRate> rate = electrics().flatMap(ModuleElectrics::vocCoefficient);
    if (rate.isPresent()) {
      Term by = new Term("b", "change by temperature", rate.get().si(), RATE);
      String words = QuantityPrint.text(rate.get().si(), Units.PERCENT_PER_DEGREE);
      return new Result<>(new Factor(cold.byCoefficient(by, work), "by " + words));
    }
    boolean nec = wiring.code().result().filter(ElectricalCode::isNec).isPresent();
    return nec && !isLost("voc-coefficient")
        ? cold.byTable(wiring.tables().get("voltage-factors"), work)
            .then(term -> new Result<>(new Factor(term, "by table 690.7(A)")))
        : new NotApplicable<>(lacks("the temperature coefficient", "voc-coefficient"));
  }

  private static final Dimension RATE = Dimension.TEMPERATURE_RATE;
}

package clampwise.facts.weight;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.ArrayWeight;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Loads;
import clampwise.job.ModuleType;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Pressure;
import clampwise.source.Span;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** A field with what weighs on the roof. */
record WeighedField(
    Layout layout, PlaneLayout plane, FieldLayout field, Limits limits, Answers answers) {

  /** A question that is asked of every field. */
  static Question each(Consumer<WeighedField> question) {
    return (layout, limits, answers) -> {
      for (PlaneLayout plane : layout.planes()) {
        for (FieldLayout field : plane.fields()) {
          question.accept(new WeighedField(layout, plane, field, limits, answers));
        }
      }
    };
  }

  /** The type of module that weighs most on its area, with the load there. */
  record Heaviest(String type, double loadPa) {

    private Heaviest orHeavier(Heaviest other) {
      return other.loadPa > loadPa ? other : this;
    }
  }

  /** The heaviest load of the field. */
  Outcome<Heaviest> heaviest() {
    Optional<String> unknown = weightUnknown();
    if (unknown.isPresent()) {
      return new NotApplicable<>(unknown.get());
    }
    Heaviest heaviest = new Heaviest(field.typeName(), 0);
    for (Map.Entry<String, ModuleType> type : types().entrySet()) {
      double loadPa = weight(type.getValue()).pressurePa(areaM2(type.getValue()));
      heaviest = heaviest.orHeavier(new Heaviest(type.getKey(), loadPa));
    }
    return new Result<>(heaviest);
  }

  /** Why the weight of the field is not known, if it is not. */
  Optional<String> weightUnknown() {
    String field = this.field.name();
    if (layout.job().unreadable().touches("loads", "dead")) {
      return Optional.of("the weight of the array by area could not be read");
    }
    if (dead().isPresent()) {
      return Optional.empty();
    }
    if (layout.job().unreadable().touches("fields", field, "hardware-mass")) {
      return Optional.of("the mass of the hardware of field " + field + " could not be read");
    }
    return types().entrySet().stream()
        .filter(type -> type.getValue().mass().isEmpty())
        .map(type -> noMass(type.getKey()))
        .findFirst();
  }

  /** Why the space under the field is not known, if it is not. */
  String clearSpaceUnknown() {
    return ClearSpace.unknown(field, layout.job().unreadable());
  }

  private String noMass(String type) {
    String what = "the mass of module " + type;
    return layout.job().unreadable().missing(what, "modules", type, "mass");
  }

  private Map<String, ModuleType> types() {
    Map<String, ModuleType> types = new LinkedHashMap<>();
    for (PlacedModule module : field.modules()) {
      types.putIfAbsent(module.typeName(), module.type());
    }
    return types;
  }

  /** The dead load of the array by area, if the job gives it. */
  private Optional<Pressure> dead() {
    return layout.job().loads().flatMap(Loads::dead);
  }

  /** Weight of a module with its hardware, which has to be known. */
  ArrayWeight weight(ModuleType type) {
    return dead()
        .map(load -> new ArrayWeight(load.pa() * areaM2(type)))
        .orElseGet(() -> ArrayWeight.ofMass(type.mass().orElseThrow().kg() + hardwareKg()));
  }

  private static double areaM2(ModuleType type) {
    return type.length().m() * type.width().m();
  }

  private double hardwareKg() {
    return field
        .field()
        .hardwareMass()
        .map(Mass::kg)
        .orElseGet(() -> limits.get("hardware-mass").si());
  }

  /** What makes up the weight of a module type, in words. */
  String madeOf(String type) {
    return dead().isPresent() ? "as the loads say" : type + " with " + hardware() + " of hardware";
  }

  private String hardware() {
    return field
        .field()
        .hardwareMass()
        .map(mass -> QuantityPrint.text(mass.kg(), mass.unit()))
        .orElseGet(() -> QuantityPrint.text(hardwareKg(), limits.get("hardware-mass").unit()));
  }

  /** The unit of loads in which the designer thinks. */
  Unit pressures() {
    return pressures(plane);
  }

  static Unit pressures(PlaneLayout plane) {
    Unit lengths = Shown.of(plane);
    return lengths.equals(Unit.FOOT) || lengths.equals(Unit.INCH) ? Units.PSF : Units.PASCAL;
  }

  void missing(Class<? extends Fact> question, String reason, Span at) {
    answers.missing(question, subject(), reason, at);
  }

  Subject subject() {
    return Subjects.field(field.name());
  }

  Span moduleAt() {
    return field.field().module().at();
  }

  /** The value that decides the weight. */
  Span weightAt() {
    return dead()
        .map(Pressure::at)
        .or(() -> field.field().hardwareMass().map(Mass::at))
        .orElseGet(this::moduleAt);
  }
}

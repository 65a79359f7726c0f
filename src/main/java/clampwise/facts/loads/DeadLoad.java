package clampwise.facts.loads;

import clampwise.calc.statics.ArrayWeight;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Loads;
import clampwise.job.Quantity.Mass;
import clampwise.job.Quantity.Pressure;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import clampwise.units.Units;
import java.util.List;
import java.util.Optional;

/**
 * Dead load of a field: by area as given for the array, else the mass of each module and of its
 * hardware. Hardware of which no mass is written counts for nothing, since weight helps against
 * uplift.
 */
record DeadLoad(FieldSite site) {

  private static final String GRAVITY = QuantityPrint.trimmed(Units.GRAVITY_M_PER_S2, 5);

  private static final String NO_HARDWARE =
      "assumption: hardware counts for nothing, no mass of it is given and weight helps against"
          + " uplift";

  private static final Source GIVEN = Source.of("given", "", "as given");

  /** Why it is not known, if so. */
  Optional<String> unknown() {
    return site.lost("the dead load of the array", "loads", "dead")
        .or(() -> byArea().isPresent() ? Optional.empty() : massUnknown());
  }

  private Optional<String> massUnknown() {
    String field = site.field().name();
    return site.field().modules().stream()
        .filter(module -> module.type().mass().isEmpty())
        .map(PlacedModule::typeName)
        .map(type -> site.missing("the mass of module " + type, "modules", type, "mass"))
        .findFirst()
        .or(
            () ->
                site.lost(
                    "the mass of the hardware of field " + field,
                    "fields",
                    field,
                    "hardware-mass"));
  }

  /** Load of a module by its area on the slope [Pa]. */
  double pa(PlacedModule module) {
    return byArea()
        .map(Pressure::pa)
        .orElseGet(() -> ArrayWeight.ofMass(massKg(module)).pressurePa(areaM2(module)));
  }

  /** The same with its line. */
  Term show(PlacedModule module, Work work) {
    Term load = Term.pressure("D", "dead load", pa(module));
    if (byArea().isPresent()) {
      work.given(load, GIVEN);
      return load;
    }
    Term mass = mass("m", "mass of the module", moduleKg(module));
    Term area = Term.area("A", "area of the module", areaM2(module));
    hardware()
        .ifPresentOrElse(
            kg ->
                work.write(
                    load,
                    work.formula("(m+m_h)*" + GRAVITY + "/A", "(m+m_h)/A"),
                    Source.STATICS,
                    mass,
                    mass("m_h", "mass of its hardware", kg),
                    area),
            () ->
                work.write(
                    new Line(
                        load,
                        work.formula("m*" + GRAVITY + "/A", "m/A"),
                        List.of(mass, area),
                        Source.STATICS,
                        NO_HARDWARE)));
    return load;
  }

  private static Term mass(String symbol, String meaning, double kg) {
    return new Term(symbol, meaning, kg, Dimension.MASS);
  }

  private Optional<Pressure> byArea() {
    return site.loads(Loads::dead);
  }

  private double massKg(PlacedModule module) {
    return moduleKg(module) + hardware().orElse(0.0);
  }

  private static double moduleKg(PlacedModule module) {
    return module.type().mass().orElseThrow().kg();
  }

  private Optional<Double> hardware() {
    return site.field().field().hardwareMass().map(Mass::kg);
  }

  private static double areaM2(PlacedModule module) {
    return module.alongM() * module.upM();
  }
}

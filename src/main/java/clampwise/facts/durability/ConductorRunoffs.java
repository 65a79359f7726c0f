package clampwise.facts.durability;

import clampwise.calc.Outcome.NotApplicable;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Circuit;
import clampwise.job.Circuit.ConductorMetal;
import clampwise.job.Circuit.Cover;
import clampwise.job.Circuit.Grounding;
import clampwise.job.Circuit.Route;
import clampwise.job.Electrical;
import clampwise.job.Named;
import clampwise.job.SurfaceMetal;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Finds bare copper conductors that stand off the roof in the rain: nothing touches, but what drips
 * from them runs over the sheet. One that lies on such a sheet has to go anyway.
 */
record ConductorRunoffs(Weathering weathering, Couples couples) {

  private static final String CURE = "use a tinned or insulated conductor, or run it in a raceway";

  void ask() {
    Optional<Electrical> electrical = weathering.job().electrical();
    if (electrical.isPresent()) {
      for (Named.Item<Circuit> circuit : electrical.get().circuits().all()) {
        circuit
            .value()
            .grounding()
            .filter(ConductorRunoffs::isInRain)
            .ifPresent(grounding -> ask(circuit, grounding));
      }
    }
  }

  /** Of aluminium it does no harm. */
  private static boolean isInRain(Grounding grounding) {
    boolean exposed = grounding.route().filter(r -> r.value() == Route.EXPOSED).isPresent();
    boolean aluminium =
        grounding.metal().filter(m -> m.value() == ConductorMetal.ALUMINIUM).isPresent();
    return exposed && !aluminium && grounding.lies().isPresent();
  }

  private void ask(Named.Item<Circuit> circuit, Grounding grounding) {
    if (grounding.metal().isEmpty()) {
      missing(circuit, "the metal of the grounding conductor of circuit ", "metal");
    } else if (grounding.cover().isEmpty()) {
      missing(circuit, "what covers the grounding conductor of circuit ", "cover");
    } else {
      boolean bare = grounding.cover().get().value() == Cover.BARE;
      RunoffOrder fact = fact(circuit, grounding, bare ? eaten(grounding) : Optional.empty());
      Optional<String> unknown = bare && fact.eaten() == 0 ? unknownSheet() : Optional.empty();
      unknown.ifPresentOrElse(
          reason -> weathering.missing(RunoffOrder.class, subject(circuit), reason),
          () -> weathering.add(fact));
    }
  }

  private Optional<String> unknownSheet() {
    Sheets sheets = new Sheets(weathering);
    for (PlaneLayout plane : sheets.underModules()) {
      if (sheets.of(plane) instanceof NotApplicable<Surface> unknown) {
        return Optional.of(unknown.reason());
      }
    }
    return Optional.empty();
  }

  /** The first sheet under modules that copper eats and does not touch. */
  private Optional<Surface> eaten(Grounding grounding) {
    boolean onRoof = grounding.lies().orElseThrow().value() == Electrical.Place.ON_ROOF;
    Sheets sheets = new Sheets(weathering);
    for (PlaneLayout plane : sheets.underModules()) {
      Optional<Surface> sheet = sheets.of(plane).result();
      boolean touches =
          onRoof && sheet.filter(s -> couples.isNever(SurfaceMetal.COPPER, s.metal())).isPresent();
      if (sheet.filter(this::isHarmed).isPresent() && !touches) {
        return sheet;
      }
    }
    return Optional.empty();
  }

  private boolean isHarmed(Surface sheet) {
    return couples.tables().isHarmedByWater(SurfaceMetal.COPPER, sheet.metal());
  }

  private static RunoffOrder fact(
      Named.Item<Circuit> circuit, Grounding grounding, Optional<Surface> eaten) {
    return new RunoffOrder(
        subject(circuit),
        grounding.cover().orElseThrow().at(),
        Unit.NUMBER,
        "the grounding conductor of circuit " + circuit.name(),
        grounding.cover().orElseThrow() + " copper",
        eaten.isPresent() ? 1 : 0,
        0,
        eaten.map(Surface::words).orElse("nothing that it eats"),
        CURE);
  }

  private static Subject subject(Named.Item<Circuit> circuit) {
    return Subject.of("electrical").part("circuit " + circuit.name()).part("water off conductor");
  }

  private void missing(Named.Item<Circuit> circuit, String what, String key) {
    String name = circuit.name().value();
    String reason = weathering.lacks(what + name, "electrical", "circuits", name, "grounding", key);
    weathering.missing(RunoffOrder.class, subject(circuit), reason);
  }
}

package clampwise.facts.durability;

import clampwise.calc.Outcome;
import clampwise.facts.durability.Contact.Size;
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
import clampwise.source.Span;
import java.util.Optional;

/** Grounding conductors on the sheets under the array. */
record GroundContacts(Weathering weathering, Couples couples) {

  void ask() {
    Optional<Electrical> electrical = weathering.job().electrical();
    if (electrical.isPresent()) {
      for (Named.Item<Circuit> circuit : electrical.get().circuits().all()) {
        circuit.value().grounding().ifPresent(grounding -> ask(circuit, grounding));
      }
    }
  }

  private void ask(Named.Item<Circuit> circuit, Grounding grounding) {
    boolean exposed = grounding.route().filter(r -> r.value() == Route.EXPOSED).isPresent();
    if (grounding.lies().isEmpty()) {
      if (exposed) {
        missing(circuit, "the place of the grounding conductor of circuit ", "lies");
      }
    } else if (grounding.lies().get().value() == Electrical.Place.OFF_ROOF) {
      contacts(circuit, grounding, true);
    } else {
      onRoof(circuit, grounding);
    }
  }

  private void onRoof(Named.Item<Circuit> circuit, Grounding grounding) {
    if (grounding.metal().isEmpty()) {
      missing(circuit, "the metal of the grounding conductor of circuit ", "metal");
    } else if (grounding.cover().isEmpty()) {
      missing(circuit, "what covers the grounding conductor of circuit ", "cover");
    } else {
      boolean covered = grounding.cover().get().value() == Cover.INSULATED;
      contacts(circuit, grounding, covered);
    }
  }

  private void contacts(Named.Item<Circuit> circuit, Grounding grounding, boolean apart) {
    Sheets sheets = new Sheets(weathering);
    for (PlaneLayout plane : sheets.underModules()) {
      if (sheets.of(plane) instanceof Outcome.Result<Surface> sheet) {
        couples.ask(contact(circuit, grounding, sheet.value(), apart), true);
      }
    }
  }

  private static Contact contact(
      Named.Item<Circuit> circuit, Grounding grounding, Surface sheet, boolean apart) {
    Subject subject = subject(circuit);
    Span at = grounding.lies().orElseThrow().at();
    String name = "the grounding conductor of circuit " + circuit.name();
    return new Contact(
        subject.part(sheet.name()),
        subject,
        at,
        new Surface(metal(grounding), name),
        sheet,
        Size.SMALL,
        apart,
        "a conductor off the roof, tinned or insulated");
  }

  private static SurfaceMetal metal(Grounding grounding) {
    boolean aluminium =
        grounding.metal().filter(m -> m.value() == ConductorMetal.ALUMINIUM).isPresent();
    boolean tinned = grounding.cover().filter(c -> c.value() == Cover.TINNED).isPresent();
    if (aluminium) {
      return SurfaceMetal.ALUMINIUM;
    }
    return tinned ? SurfaceMetal.TINNED_COPPER : SurfaceMetal.COPPER;
  }

  private static Subject subject(Named.Item<Circuit> circuit) {
    return Subject.of("electrical").part("circuit " + circuit.name()).part("conductor on roof");
  }

  private void missing(Named.Item<Circuit> circuit, String what, String key) {
    String name = circuit.name().value();
    String reason = weathering.lacks(what + name, "electrical", "circuits", name, "grounding", key);
    weathering.missing(MetalCouple.class, subject(circuit), reason);
  }
}

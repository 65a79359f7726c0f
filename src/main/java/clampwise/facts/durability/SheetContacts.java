package clampwise.facts.durability;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.facts.Subjects;
import clampwise.facts.durability.Contact.Size;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Flag;
import clampwise.job.Screws;
import clampwise.job.SurfaceMetal;
import java.util.Optional;

/** What of an array and of the roof's own things touches the sheet. */
final class SheetContacts {

  private static final String PAD = "a part of another metal, or a pad that keeps the two apart";

  private final Weathering weathering;
  private final Couples couples;
  private final Sheets sheets;
  private final Unsaid bodies;
  private final Unsaid screws;
  private final Unsaid obstructions;

  SheetContacts(Weathering weathering, Couples couples) {
    this.weathering = weathering;
    this.couples = couples;
    this.sheets = new Sheets(weathering);
    this.bodies = new Unsaid(weathering, "the metal of", "metal");
    this.screws = new Unsaid(weathering, "the metal of the screws of", "screws: metal");
    this.obstructions = new Unsaid(weathering, "the metal or boot of", "metal");
  }

  void ask() {
    for (PlaneLayout plane : sheets.underModules()) {
      if (sheets.of(plane) instanceof NotApplicable<Surface> unknown) {
        weathering.missing(MetalCouple.class, Subjects.panel(plane.panelName()), unknown.reason());
      }
    }
    UsedPart.all(weathering).forEach(this::part);
    weathering.layout().planes().forEach(this::obstructions);
    new GroundContacts(weathering, couples).ask();
    bodies.tell(MetalCouple.class, Subject.of("parts"));
    screws.tell(MetalCouple.class, Subject.of("parts"));
    obstructions.tell(MetalCouple.class, Subject.of("planes"));
  }

  private void part(UsedPart used) {
    if (sheets.of(used.plane()) instanceof Outcome.Result<Surface> sheet) {
      body(used, sheet.value());
      screws(used, sheet.value());
    }
  }

  private void body(UsedPart used, Surface sheet) {
    String name = used.name().value();
    if (used.part().metal().isEmpty()) {
      bodies.add(name, "parts", used.shelf(), name, "metal");
    } else {
      SurfaceMetal metal = SurfaceMetal.of(used.part().metal().get().value());
      ask(used, new Surface(metal, used.word()), sheet, PAD);
    }
  }

  private void screws(UsedPart used, Surface sheet) {
    String name = used.name().value();
    Optional<SurfaceMetal> metal = used.part().screws().flatMap(Screws::metal).map(Choice::value);
    if (metal.isEmpty()) {
      screws.add(name, "parts", used.shelf(), name, "screws");
    } else {
      ask(
          used,
          new Surface(metal.get(), "the screws of " + used.word()),
          sheet,
          "screws that are no less noble than the sheet, such as stainless steel");
    }
  }

  private void ask(UsedPart used, Surface part, Surface sheet, String cure) {
    Subject onSheet = Subjects.panel(used.plane().panelName()).part("on it");
    boolean apart = isYes(used.part().isolated());
    couples.ask(
        new Contact(
            onSheet.part(part.name()),
            onSheet.part(used.name().value()),
            used.name().at(),
            part,
            sheet,
            Size.SMALL,
            apart,
            cure),
        true);
  }

  private void obstructions(PlaneLayout plane) {
    for (Obstacle obstacle : plane.obstacles()) {
      if (obstacle.obstruction().metal().isPresent()) {
        if (sheets.of(plane) instanceof Outcome.Result<Surface> sheet) {
          couples.ask(contact(plane, obstacle, sheet.value()), true);
        }
      } else if (weathering.job().roof().isPresent() && obstacle.obstruction().boot().isEmpty()) {
        obstructions.add(
            obstacle.name(), "planes", plane.name(), "obstructions", obstacle.name(), "metal");
      }
    }
  }

  private static Contact contact(PlaneLayout plane, Obstacle obstacle, Surface sheet) {
    Subject subject = Subjects.plane(plane.name()).part(obstacle.name());
    Choice<SurfaceMetal> metal = obstacle.obstruction().metal().orElseThrow();
    return new Contact(
        subject,
        subject,
        metal.at(),
        new Surface(metal.value(), obstacle.name()),
        sheet,
        Size.SMALL,
        isYes(obstacle.obstruction().isolated()),
        "a flashing or boot of the metal of the sheet, of rubber or of stainless steel");
  }

  private static boolean isYes(Optional<Flag> flag) {
    return flag.filter(Flag::value).isPresent();
  }
}

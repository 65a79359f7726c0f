package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.Attachment.Kind;
import clampwise.facts.layout.Grip;
import clampwise.facts.layout.Grip.Edge;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.ModuleClamp;
import clampwise.job.Quantity.Length;
import clampwise.job.RoofAttachment;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Measures what lies below each end clamp past the frame's edge: it must stand on the body whole.
 */
final class EndBearings {

  private final FieldCase asked;
  private final ClampParts parts;
  private final Map<String, Optional<Double>> lengths = new HashMap<>();
  private Optional<Bearing> worst = Optional.empty();
  private Optional<Text> unmeasured = Optional.empty();

  private EndBearings(FieldCase asked) {
    this.asked = asked;
    this.parts = ClampParts.of(asked.layout());
  }

  private record Bearing(Attachment attachment, Text part, PlacedModule module, double pastM) {}

  static void ask(FieldCase asked) {
    if (asked.field().attachmentsUnknown().isPresent()) {
      String reason = asked.field().attachmentsUnknown().get();
      asked.missing(EndBearing.class, asked.subject().part("end clamps"), reason, asked.at());
    } else {
      new EndBearings(asked).ask();
    }
  }

  private void ask() {
    for (Attachment drawn : asked.field().attachments()) {
      if (drawn.kind() == Kind.END && !drawn.grips().isEmpty()) {
        drawn.part().ifPresent(part -> measure(drawn, part));
      }
    }
    worst.ifPresent(bearing -> asked.add(fact(bearing)));
    unmeasured.ifPresent(
        part -> {
          String reason = unmeasured(part);
          asked.missing(EndBearing.class, asked.subject().part("end clamps"), reason, part.at());
        });
  }

  private String unmeasured(Text part) {
    String name = part.value();
    boolean bracket = asked.unreadable().touches("parts", "rib-brackets", name);
    String shelf = bracket ? "rib-brackets" : "seam-clamps";
    String what = "the length of " + part + " along the slope";
    return asked.unreadable().missing(what, "parts", shelf, name, "body-length");
  }

  private void measure(Attachment drawn, Text part) {
    Optional<Double> lengthM = lengths.computeIfAbsent(part.value(), this::lengthM);
    if (lengthM.isEmpty()) {
      unmeasured = Optional.of(part);
    } else {
      Grip grip = drawn.grips().get(0);
      double pastM = Snap.m(lengthM.get() / 2 + outwardM(drawn, grip));
      if (worst.isEmpty() || pastM < worst.get().pastM()) {
        worst = Optional.of(new Bearing(drawn, part, grip.module(), pastM));
      }
    }
  }

  private Optional<Double> lengthM(String part) {
    return parts.all().attachment(part).flatMap(RoofAttachment::bodyLength).map(Length::m);
  }

  /** How far the middle of the body lies past the edge that the end clamp holds. */
  private static double outwardM(Attachment drawn, Grip grip) {
    return grip.edge() == Edge.LOWER
        ? grip.module().bottomM() - drawn.upM()
        : drawn.upM() - grip.module().topM();
  }

  private EndBearing fact(Bearing bearing) {
    Limit usual = asked.limits().get("end-clamp-edge-distance-least");
    Optional<Length> stated =
        parts
            .on(bearing.attachment())
            .map(ClampUse::clamp)
            .flatMap(ModuleClamp::edgeDistanceAtLeast);
    Subject subject = asked.subject().part("end clamps");
    return new EndBearing(
        subject,
        subject,
        bearing.part().at(),
        stated.map(Length::unit).orElse(Unit.MILLIMETRE),
        bearing.attachment().name(),
        bearing.part().value(),
        bearing.module().name(),
        bearing.pastM(),
        Snap.m(stated.map(Length::m).orElse(usual.si())),
        stated.isPresent() ? Optional.empty() : Optional.of(usual));
  }
}

package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.job.Quantity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Compares surveyed with drawn seams under each field. */
final class SeamDrifts implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        ask(plane, field, limits, answers);
      }
    }
  }

  private static void ask(PlaneLayout plane, FieldLayout field, Limits limits, Answers answers) {
    List<SeamLine> under = under(plane, field);
    Optional<SeamLine> worst =
        under.stream()
            .filter(seam -> seam.surveyed() && seam.nominalM().isPresent())
            .max(Comparator.comparingDouble(SeamDrifts::driftM));
    worst.ifPresent(seam -> answers.add(fact(plane, field, seam, ClampSlack.of(field, limits))));
    if (under.stream().noneMatch(SeamLine::surveyed)) {
      String reason = "the seams of plane " + plane.name() + " were not surveyed";
      answers.missing(
          SeamDrift.class, RoofSubjects.field(field), reason, plane.plane().panel().at());
    }
  }

  private static List<SeamLine> under(PlaneLayout plane, FieldLayout field) {
    double leftM = field.modules().stream().mapToDouble(PlacedModule::leftM).min().orElse(0);
    double rightM = field.modules().stream().mapToDouble(PlacedModule::rightM).max().orElse(0);
    return plane.seams().stream()
        .filter(seam -> leftM <= seam.alongM() && seam.alongM() <= rightM)
        .toList();
  }

  private static double driftM(SeamLine seam) {
    return Snap.m(Math.abs(seam.alongM() - seam.nominalM().orElseThrow()));
  }

  private static SeamDrift fact(
      PlaneLayout plane, FieldLayout field, SeamLine seam, ClampSlack slack) {
    return new SeamDrift(
        RoofSubjects.field(field).part("seams"),
        RoofSubjects.plane(plane).part("seams"),
        drawn(plane).map(Quantity::at).orElse(seam.at()),
        drawn(plane).map(Quantity::unit).orElse(Shown.of(plane)),
        field.name(),
        seam.number(),
        seam.nominalM().orElseThrow(),
        seam.alongM(),
        driftM(seam),
        slack.slackM(),
        slack.from(),
        slack.limit());
  }

  private static Optional<Quantity> drawn(PlaneLayout plane) {
    return plane
        .plane()
        .seams()
        .flatMap(Plane.Seams::pitch)
        .or(() -> plane.panel().flatMap(Panel::pitch))
        .map(Quantity.class::cast);
  }
}

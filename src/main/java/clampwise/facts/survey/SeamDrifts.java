package clampwise.facts.survey;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.job.Plane;
import clampwise.job.Quantity.Offset;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;

/** Asks of each field how far the surveyed seams under it lie from the drawing. */
final class SeamDrifts {

  private final PlaneLayout plane;
  private final Limit limit;
  private final Answers answers;

  private SeamDrifts(PlaneLayout plane, Limits limits, Answers answers) {
    this.plane = plane;
    this.limit = limits.get("seam-survey-difference-most");
    this.answers = answers;
  }

  static void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      SeamDrifts drifts = new SeamDrifts(plane, limits, answers);
      plane.fields().stream().filter(field -> !field.modules().isEmpty()).forEach(drifts::judge);
    }
  }

  private void judge(FieldLayout field) {
    Envelope box = around(field);
    List<SeamLine> under = plane.seams().stream().filter(seam -> isUnder(seam, box)).toList();
    if (plane.seams().isEmpty()) {
      missing(field, plane.reading().seamsUnknown());
    } else if (plane.seams().stream().noneMatch(SeamLine::surveyed)) {
      missing(
          field,
          "the "
              + LineWord.of(plane.panel()).many()
              + " of plane "
              + plane.name()
              + " are nominal; nobody has measured them (seams: surveyed)");
    } else {
      Map<Integer, Double> rooms = ClampRoom.bySeam(field);
      worst(under, rooms)
          .ifPresentOrElse(
              seam -> answers.add(fact(field, seam, mostM(seam, rooms))),
              () -> missing(field, notCompared(field)));
    }
  }

  private String notCompared(FieldLayout field) {
    return "no "
        + LineWord.of(plane.panel()).one()
        + " under field "
        + field.name()
        + " is both measured and placed by the drawing";
  }

  /** The seam that lies furthest beyond what it may, or else comes nearest to it. */
  private Optional<SeamLine> worst(List<SeamLine> seams, Map<Integer, Double> rooms) {
    return seams.stream()
        .filter(seam -> seam.surveyed() && seam.nominalM().isPresent())
        .max(Comparator.comparingDouble(seam -> driftM(seam) - mostM(seam, rooms)));
  }

  private double mostM(SeamLine seam, Map<Integer, Double> rooms) {
    return Math.min(Snap.m(limit.si()), rooms.getOrDefault(seam.number(), limit.si()));
  }

  private static double driftM(SeamLine seam) {
    return Snap.m(Math.abs(seam.alongM() - seam.nominalM().orElseThrow()));
  }

  /** The rectangle around all modules of a field. */
  private static Envelope around(FieldLayout field) {
    Envelope box = new Envelope();
    for (PlacedModule module : field.modules()) {
      box.expandToInclude(module.leftM(), module.bottomM());
      box.expandToInclude(module.rightM(), module.topM());
    }
    return box;
  }

  private static boolean isUnder(SeamLine seam, Envelope box) {
    return box.getMinX() <= seam.alongM()
        && seam.alongM() <= box.getMaxX()
        && box.getMinY() <= seam.toUpM()
        && seam.fromUpM() <= box.getMaxY();
  }

  private SeamDrift fact(FieldLayout field, SeamLine seam, double mostM) {
    return new SeamDrift(
        Subjects.field(field.name()),
        seam.at(),
        unit(seam),
        field.name(),
        seam.name(),
        driftM(seam),
        mostM,
        mostM < Snap.m(limit.si()) ? Optional.empty() : Optional.of(limit));
  }

  /** The unit of the seam's position, if it is written in the job file. */
  private Unit unit(SeamLine seam) {
    return plane.plane().seams().stream()
        .map(Plane.Seams::surveyed)
        .flatMap(List::stream)
        .filter(offset -> offset.at().equals(seam.at()))
        .map(Offset::unit)
        .findFirst()
        .orElse(Unit.MILLIMETRE);
  }

  private void missing(FieldLayout field, String reason) {
    answers.missing(SeamDrift.class, Subjects.field(field.name()), reason, field.at());
  }
}

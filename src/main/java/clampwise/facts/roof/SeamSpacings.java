package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Fact;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Quantity.Length;
import java.util.List;

/** Holds the spacing along the seams against the spacing allowed in their wind zones. */
final class SeamSpacings extends SpacingQuestion {

  SeamSpacings() {
    super(SeamSpacing.class, "allowed-seam-spacing");
  }

  @Override
  Named<Length> allowed(FieldLayout field) {
    return field.field().allowedSeamSpacing();
  }

  @Override
  String direction(PlaneLayout plane) {
    return "the " + LineWord.of(plane.panel()).many();
  }

  private static String name(Widest widest) {
    return widest.stretch().from().seam().map(SeamLine::name).orElseThrow();
  }

  @Override
  List<Stretch> stretches(FieldLayout field, Limits limits) {
    return new Stretches(field, limits).alongSeams();
  }

  @Override
  int group(Stretch stretch) {
    return stretch.from().seam().map(SeamLine::number).orElse(0);
  }

  @Override
  Fact fact(PlaneLayout plane, FieldLayout field, Widest widest, Length allowed) {
    Subject zone = RoofSubjects.field(field).part("zone " + widest.zone());
    return new SeamSpacing(
        zone.part(name(widest)),
        zone,
        widest.stretch().from().at(),
        allowed.unit(),
        field.name(),
        name(widest),
        widest.stretch().from().name(),
        widest.stretch().to().name(),
        widest.zone(),
        Snap.m(widest.stretch().spacingM()),
        Snap.m(allowed.m()));
  }
}

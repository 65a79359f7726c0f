package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Fact;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.LineWord;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.job.Quantity.Length;
import clampwise.units.QuantityPrint;
import java.util.List;
import java.util.Optional;

/** Holds the spacing along each line against the spacing allowed in its wind zones. */
final class LineSpacings extends SpacingQuestion {

  private static final double ROUNDING = 1e-9;

  LineSpacings() {
    super(LineSpacing.class, "allowed-spacing");
  }

  @Override
  Named<Length> allowed(FieldLayout field) {
    return field.field().allowedSpacing();
  }

  @Override
  String direction(PlaneLayout plane) {
    return "a line";
  }

  @Override
  List<Stretch> stretches(FieldLayout field, Limits limits) {
    return new Stretches(field, limits).alongLines();
  }

  @Override
  int group(Stretch stretch) {
    return stretch.from().line();
  }

  @Override
  Fact fact(PlaneLayout plane, FieldLayout field, Widest widest, Length allowed) {
    Subject zone = RoofSubjects.field(field).part("zone " + widest.zone());
    return new LineSpacing(
        zone.part("line " + widest.group()),
        zone,
        widest.stretch().from().at(),
        allowed.unit(),
        field.name(),
        widest.group(),
        widest.stretch().from().name(),
        widest.stretch().to().name(),
        widest.zone(),
        Snap.m(widest.stretch().spacingM()),
        Snap.m(allowed.m()),
        pattern(plane, allowed));
  }

  /** The widest step over the seams that keeps the allowed spacing, in words. */
  private static Optional<String> pattern(PlaneLayout plane, Length allowed) {
    Optional<Length> pitch =
        plane
            .plane()
            .seams()
            .flatMap(Plane.Seams::pitch)
            .or(() -> plane.panel().flatMap(Panel::pitch));
    return pitch
        .filter(given -> given.m() > 0 && given.m() <= allowed.m() + ROUNDING)
        .map(given -> pattern(plane, given, (int) Math.floor(allowed.m() / given.m() + ROUNDING)));
  }

  private static String pattern(PlaneLayout plane, Length pitch, int step) {
    String line = LineWord.of(plane.panel()).one();
    String spacing = QuantityPrint.text(step * pitch.m(), pitch.unit());
    return step == 1
        ? "every " + line + " (" + spacing + ")"
        : "at least one " + line + " in " + step + " (" + spacing + ")";
  }
}

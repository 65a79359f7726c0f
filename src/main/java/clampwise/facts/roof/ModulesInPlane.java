package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneEdge;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Overreach.Over;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Plane.EdgeKind;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * Measures how far modules reach over the edges of their plane. The modules of a field that lie
 * inside are one answer; each that reaches over an edge is one of its own.
 */
final class ModulesInPlane implements Question {

  private static final Set<EdgeKind> ROOF_GOES_ON =
      EnumSet.of(
          EdgeKind.RIDGE, EdgeKind.HIP, EdgeKind.VALLEY, EdgeKind.STEP, EdgeKind.EXPANSION_JOINT);

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      for (FieldLayout field : plane.fields()) {
        plane
            .outline()
            .ifPresentOrElse(
                outline -> ask(plane, outline, field, answers),
                () -> missing(plane, field, answers));
      }
    }
  }

  private static void missing(PlaneLayout plane, FieldLayout field, Answers answers) {
    String reason = plane.reading().outlineUnknown();
    Span at = plane.plane().panel().at();
    answers.missing(ModuleInPlane.class, RoofSubjects.field(field), reason, at);
    answers.missing(ModuleOnOnePlane.class, RoofSubjects.field(field), reason, at);
  }

  private static void ask(PlaneLayout plane, Polygon outline, FieldLayout field, Answers answers) {
    Overreach overreach = new Overreach(plane, outline);
    int inside = 0;
    for (PlacedModule module : field.modules()) {
      Optional<Over> over = overreach.of(module);
      over.ifPresent(found -> answers.add(fact(field, module, found)));
      inside += over.isEmpty() ? 1 : 0;
    }
    inside(plane, field, inside, answers);
  }

  private static void inside(PlaneLayout plane, FieldLayout field, int count, Answers answers) {
    Subject rest = RoofSubjects.field(field).part("modules inside");
    if (count > 0) {
      Unit shown = Shown.small(Shown.of(field));
      String modules = count + " modules";
      answers.add(new ModuleInPlane(rest, rest, field.at(), shown, modules, "none", 0, 0));
      if (plane.edges().stream().map(PlaneEdge::kind).anyMatch(ROOF_GOES_ON::contains)) {
        answers.add(new ModuleOnOnePlane(rest, rest, field.at(), shown, modules, "none", 0, 0));
      }
    }
  }

  private static Fact fact(FieldLayout field, PlacedModule module, Over over) {
    Subject subject = RoofSubjects.module(module);
    String edge = Choice.word(over.edge().kind()).replace('-', ' ');
    Subject cause = RoofSubjects.field(field).part("modules over the " + edge);
    Unit shown = Shown.small(Shown.of(field));
    double overM = over.depthM();
    return ROOF_GOES_ON.contains(over.edge().kind())
        ? new ModuleOnOnePlane(subject, cause, module.at(), shown, module.name(), edge, overM, 0)
        : new ModuleInPlane(subject, cause, module.at(), shown, module.name(), edge, overM, 0);
  }
}

package clampwise.facts.movement;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Neighbour;
import clampwise.facts.layout.Neighbour.Side;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Offset;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks for rows of modules that run over an expansion joint of the building. */
final class JointCrossings {

  private static final double TOUCH_M = 1e-6;

  private final MovingPlane moving;
  private final PlaneLayout plane;
  private final Limit least;

  private JointCrossings(MovingPlane moving) {
    this.moving = moving;
    this.plane = moving.plane();
    this.least = moving.limits().get("expansion-joint-gap-least");
  }

  static void ask(MovingPlane moving) {
    JointCrossings crossings = new JointCrossings(moving);
    Optional<List<Offset>> joints = moving.plane().plane().expansionJoints();
    if (joints.isEmpty()) {
      crossings.unwritten();
    } else if (!joints.get().isEmpty()) {
      crossings.ask(joints.get());
    }
  }

  /** Where joints are not given, the question is open only on roofs long enough to have one. */
  private void unwritten() {
    double longestM = moving.limits().get("building-without-joint-most").si();
    String where = "where the expansion joints of plane " + plane.name() + " lie ";
    if (moving.isPlaneKeyLost("expansion-joints")) {
      missing(where + "could not be read");
    } else if (plane.outline().isEmpty()) {
      missing(plane.reading().outlineUnknown());
    } else if (plane.outline().get().getEnvelopeInternal().getWidth() > longestM + TOUCH_M) {
      missing(where + "is not given (expansion-joints), and it is long enough to have one");
    }
  }

  private void missing(String reason) {
    Span at = plane.plane().panel().at();
    moving.missing(JointCrossing.class, Subjects.plane(plane.name()), reason, at);
  }

  private void ask(List<Offset> joints) {
    ModuleIndex index = ModuleIndex.of(plane);
    for (FieldLayout field : plane.fields()) {
      for (int n = 0; n < joints.size(); n++) {
        Offset joint = joints.get(n);
        Subject subject = Subjects.field(field.name()).part("expansion joint " + (n + 1));
        moving.answers().add(fact(subject, field, joint, narrowest(field, joint.m(), index)));
      }
    }
  }

  private record Gap(String modules, double m, Span at) {}

  private Gap narrowest(FieldLayout field, double jointM, ModuleIndex index) {
    Gap narrowest = new Gap("no modules meet over", Snap.m(least.si()), field.at());
    for (PlacedModule module : field.modules()) {
      Optional<Gap> gap = gap(module, jointM, index);
      if (gap.isPresent() && gap.get().m() < narrowest.m()) {
        narrowest = gap.get();
      }
    }
    return narrowest;
  }

  private Optional<Gap> gap(PlacedModule module, double jointM, ModuleIndex index) {
    if (module.leftM() < jointM - TOUCH_M && module.rightM() > jointM + TOUCH_M) {
      return Optional.of(new Gap(module.name() + " lies across", 0, module.at()));
    }
    double toJointM = jointM - module.rightM();
    if (toJointM < -TOUCH_M || toJointM > least.si()) {
      return Optional.empty();
    }
    return index.beside(module, Side.RIGHT, least.si()).stream()
        .filter(near -> near.module().leftM() >= jointM - TOUCH_M)
        .findFirst()
        .map(near -> over(module, near));
  }

  private static Gap over(PlacedModule module, Neighbour near) {
    String modules = module.name() + " and " + near.module().name() + " meet over";
    return new Gap(modules, near.gapM(), module.at());
  }

  private JointCrossing fact(Subject subject, FieldLayout field, Offset joint, Gap gap) {
    return new JointCrossing(
        subject,
        subject,
        gap.at(),
        Shown.small(Shown.of(field)),
        units(joint.unit(), Shown.of(field), gap.m()),
        field.name(),
        gap.modules(),
        joint.m(),
        gap.m(),
        Snap.m(least.si()),
        Optional.of(least));
  }

  /** No gap at all is printed in inches, as the one beside it that should be there. */
  private static Map<String, Unit> units(Unit joint, Unit shown, double gapM) {
    boolean none = gapM == 0 && shown.equals(Unit.FOOT);
    return none ? Map.of("jointM", joint, "gapM", Unit.INCH) : Map.of("jointM", joint);
  }
}

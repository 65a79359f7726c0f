package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Named;
import clampwise.job.Quantity.Length;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Holds modules against obstructions: what lies over the body, and what beside it comes too near.
 * An obstruction that no module comes near is one answer of each kind.
 */
final class ObstacleQuestion implements Question {

  private static final GeometryFactory SHAPES = new GeometryFactory();
  private static final String NO_MODULE = "no module";

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    for (PlaneLayout plane : layout.planes()) {
      ModuleIndex index = ModuleIndex.of(plane);
      plane.obstacles().forEach(obstacle -> ask(plane, obstacle, near(index, obstacle), answers));
      plane
          .plane()
          .obstructions()
          .unreadable()
          .forEach(name -> unreadable(plane, name, layout, answers));
    }
  }

  private static void unreadable(PlaneLayout plane, String name, Layout layout, Answers answers) {
    Subject subject = RoofSubjects.plane(plane).part(name);
    String reason = "obstruction " + name + " could not be read";
    Span at =
        layout.job().planes().all().stream()
            .map(Named.Item::name)
            .filter(written -> written.value().equals(plane.name()))
            .map(Text::at)
            .findFirst()
            .orElseThrow();
    answers.missing(ObstacleCover.class, subject, reason, at);
    answers.missing(ObstacleClearance.class, subject, reason, at);
  }

  private static List<PlacedModule> near(ModuleIndex index, Obstacle obstacle) {
    Envelope box = obstacle.keepClear().getEnvelopeInternal();
    return index.near(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY());
  }

  private static void ask(
      PlaneLayout plane, Obstacle obstacle, List<PlacedModule> near, Answers answers) {
    List<PlacedModule> over = near.stream().filter(m -> coverM(obstacle, m) > 0).toList();
    over.forEach(module -> answers.add(cover(plane, obstacle, module)));
    if (over.isEmpty()) {
      answers.add(uncovered(plane, obstacle));
    }
    List<PlacedModule> beside = near.stream().filter(m -> coverM(obstacle, m) == 0).toList();
    obstacle
        .obstruction()
        .clearance()
        .ifPresentOrElse(
            clearance -> clearances(plane, obstacle, clearance, beside, answers),
            () -> missing(plane, obstacle, answers));
  }

  private static void missing(PlaneLayout plane, Obstacle obstacle, Answers answers) {
    String reason =
        plane
            .reading()
            .unreadable()
            .missing(
                "the clearance of " + obstacle.name(),
                "planes",
                plane.name(),
                "obstructions",
                obstacle.name(),
                "clearance");
    answers.missing(ObstacleClearance.class, subject(plane, obstacle), reason, obstacle.at());
  }

  private static void clearances(
      PlaneLayout plane,
      Obstacle obstacle,
      Length clearance,
      List<PlacedModule> beside,
      Answers answers) {
    beside.forEach(module -> answers.add(clearance(plane, obstacle, clearance, module)));
    if (beside.isEmpty()) {
      Subject subject = subject(plane, obstacle);
      answers.add(
          new ObstacleClearance(
              subject,
              subject,
              obstacle.at(),
              clearance.unit(),
              NO_MODULE,
              obstacle.name(),
              Snap.m(clearance.m()),
              Snap.m(clearance.m()),
              0));
    }
  }

  private static ObstacleClearance clearance(
      PlaneLayout plane, Obstacle obstacle, Length clearance, PlacedModule module) {
    double gapM = Snap.m(body(module).distance(obstacle.body()));
    return new ObstacleClearance(
        subject(plane, obstacle).part(module.name()),
        subject(plane, obstacle),
        module.at(),
        clearance.unit(),
        module.name(),
        obstacle.name(),
        gapM,
        Snap.m(clearance.m()),
        Snap.m(Math.max(0, clearance.m() - gapM)));
  }

  private static ObstacleCover cover(PlaneLayout plane, Obstacle obstacle, PlacedModule module) {
    return new ObstacleCover(
        subject(plane, obstacle).part(module.name()),
        subject(plane, obstacle),
        module.at(),
        Shown.small(obstacle.obstruction().at().along().unit()),
        module.name(),
        obstacle.name(),
        kind(obstacle),
        coverM(obstacle, module),
        0);
  }

  private static ObstacleCover uncovered(PlaneLayout plane, Obstacle obstacle) {
    Subject subject = subject(plane, obstacle);
    return new ObstacleCover(
        subject,
        subject,
        obstacle.at(),
        Shown.small(obstacle.obstruction().at().along().unit()),
        NO_MODULE,
        obstacle.name(),
        kind(obstacle),
        0,
        0);
  }

  private static double coverM(Obstacle obstacle, PlacedModule module) {
    Envelope shared = obstacle.body().intersection(body(module)).getEnvelopeInternal();
    return shared.isNull() ? 0 : Snap.m(Math.min(shared.getWidth(), shared.getHeight()));
  }

  private static Geometry body(PlacedModule module) {
    return SHAPES.toGeometry(
        new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM()));
  }

  private static String kind(Obstacle obstacle) {
    return Choice.word(obstacle.obstruction().kind().value()).replace('-', ' ');
  }

  private static Subject subject(PlaneLayout plane, Obstacle obstacle) {
    return RoofSubjects.plane(plane).part(obstacle.name());
  }
}

package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.EdgeDistance;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Plane.EdgeKind;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Polygon;

/**
 * Measures how far each field stays from the edges of the roof. A field that reaches over the edges
 * of its plane is left to the questions about that.
 */
final class ArrayEdges implements Question {

  private static final Set<EdgeKind> KINDS =
      EnumSet.of(EdgeKind.EAVE, EdgeKind.RIDGE, EdgeKind.RAKE, EdgeKind.HIP);

  private record Near(PlacedModule module, EdgeDistance distance) {

    Near orNearer(Near other) {
      return other.distance.inPlaneM() < distance.inPlaneM() ? other : this;
    }
  }

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    Limit heights = limits.get("array-edge-distance-heights");
    WindMethod.each(
        layout,
        (plane, field) -> ask(plane, field, heights, answers),
        (plane, field) -> missing(field, WindMethod.unknown(layout), answers));
  }

  private static void ask(PlaneLayout plane, FieldLayout field, Limit heights, Answers answers) {
    Optional<TopHeight> height = TopHeight.of(field);
    if (plane.outline().isEmpty()) {
      missing(field, plane.reading().outlineUnknown(), answers);
    } else if (height.isEmpty()) {
      missing(field, TopHeight.unknown(field, plane.reading().unreadable()), answers);
    } else {
      List<Near> nearest = nearest(plane, plane.outline().get(), field);
      for (int n = 0; n < nearest.size(); n++) {
        if (KINDS.contains(nearest.get(n).distance().edge().kind())) {
          answers.add(fact(field, n + 1, nearest.get(n), height.get(), heights));
        }
      }
    }
  }

  private static void missing(FieldLayout field, String reason, Answers answers) {
    answers.missing(ArrayEdge.class, RoofSubjects.field(field), reason, field.at());
  }

  /** The module inside the plane that is nearest to each edge, in the order of the edges. */
  private static List<Near> nearest(PlaneLayout plane, Polygon outline, FieldLayout field) {
    Overreach overreach = new Overreach(plane, outline);
    List<Near> nearest = new ArrayList<>();
    for (PlacedModule module : field.modules()) {
      if (overreach.of(module).isEmpty()) {
        add(nearest, module, EdgeDistance.of(plane, module));
      }
    }
    return nearest;
  }

  private static void add(List<Near> nearest, PlacedModule module, List<EdgeDistance> distances) {
    List<Near> here = distances.stream().map(distance -> new Near(module, distance)).toList();
    if (nearest.isEmpty()) {
      nearest.addAll(here);
    } else {
      for (int n = 0; n < here.size(); n++) {
        nearest.set(n, nearest.get(n).orNearer(here.get(n)));
      }
    }
  }

  private static ArrayEdge fact(
      FieldLayout field, int number, Near near, TopHeight height, Limit heights) {
    String edge = Choice.word(near.distance().edge().kind());
    Subject subject = RoofSubjects.field(field).part("edge " + number + ", " + edge);
    double leastM = Snap.m(heights.si() * height.m());
    double distanceM = near.distance().inPlaneM();
    return new ArrayEdge(
        subject,
        subject,
        near.module().at(),
        Shown.small(Shown.of(field)),
        Map.of("heightM", height.unit()),
        field.name(),
        near.module().name(),
        edge,
        height.m(),
        distanceM,
        leastM,
        Snap.m(Math.max(0, leastM - distanceM)),
        lower(field, distanceM / heights.si()),
        Optional.of(heights));
  }

  /** No field is lower than its frames. */
  private static String lower(FieldLayout field, double lowerM) {
    boolean low = field.type().frameHeight().filter(frame -> frame.m() >= lowerM).isPresent();
    return low ? "" : ", or lower it to half of its distance";
  }
}

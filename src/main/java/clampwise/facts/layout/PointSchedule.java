package clampwise.facts.layout;

import clampwise.job.Attach.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Attachments written point by point. */
final class PointSchedule {

  private static final int NO_LINE = 0;

  private PointSchedule() {}

  static List<Planned> read(String field, List<Point> points, LineMap lines) {
    List<Planned> planned = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      planned.add(planned(field + " point " + (i + 1), points.get(i), lines));
    }
    return planned;
  }

  private static Planned planned(String name, Point point, LineMap lines) {
    double alongM = point.at().along().m();
    double upM = point.at().up().m();
    Optional<Integer> line = lines.lineAt(alongM, upM);
    return new Planned(
        name, line.orElse(NO_LINE), alongM, upM, point.part(), point.clamp(), point.at().at());
  }
}

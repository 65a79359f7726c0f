package clampwise.facts.durability;

import clampwise.facts.layout.PlacedModule;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;

/** How far a module is from lines and things on its plane. */
record ModuleReach(PlacedModule module) {

  /** Distance to a line, 0 where the line crosses the module [m]. */
  double toM(LineSegment line) {
    Envelope box = box();
    Coordinate[] corners = corners();
    double nearestM = Math.min(box.distance(point(line.p0)), box.distance(point(line.p1)));
    for (int i = 0; i < corners.length; i++) {
      LineSegment side = new LineSegment(corners[i], corners[(i + 1) % corners.length]);
      nearestM = Math.min(nearestM, side.distance(line));
    }
    return nearestM;
  }

  private static Envelope point(Coordinate at) {
    return new Envelope(at);
  }

  Envelope box() {
    return new Envelope(module.leftM(), module.rightM(), module.bottomM(), module.topM());
  }

  private Coordinate[] corners() {
    return new Coordinate[] {
      new Coordinate(module.leftM(), module.bottomM()),
      new Coordinate(module.rightM(), module.bottomM()),
      new Coordinate(module.rightM(), module.topM()),
      new Coordinate(module.leftM(), module.topM())
    };
  }
}

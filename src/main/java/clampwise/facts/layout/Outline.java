package clampwise.facts.layout;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/** Outline of a plane with its edges in order; no area where none or an impossible one is given. */
record Outline(Optional<Polygon> area, List<PlaneEdge> edges) {

  static final Outline NONE = new Outline(Optional.empty(), List.of());
}

package clampwise.facts.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/** Cuts an area into layers: each takes what no layer above it has taken. */
final class LayerCut {

  private LayerCut() {}

  /** What each layer takes, in their order. */
  static List<Geometry> of(Geometry area, List<ZoneLayer> layers) {
    return ofRectangles(area, layers).orElseGet(() -> ofAny(area, layers));
  }

  private static List<Geometry> ofAny(Geometry area, List<ZoneLayer> layers) {
    List<Geometry> taken = new ArrayList<>();
    Geometry free = area;
    for (ZoneLayer layer : layers) {
      taken.add(PlanDrawing.both(layer.area(), free));
      free = PlanDrawing.without(free, layer.area());
    }
    return taken;
  }

  /** The same without an overlay, unless something in it is no rectangle. */
  private static Optional<List<Geometry>> ofRectangles(Geometry area, List<ZoneLayer> layers) {
    List<Geometry> taken = new ArrayList<>();
    Optional<Rectangles> free = Rectangles.of(area);
    for (ZoneLayer layer : layers) {
      Optional<Rectangles> cut = Rectangles.of(layer.area());
      if (free.isEmpty() || cut.isEmpty()) {
        return Optional.empty();
      }
      Optional<Geometry> own = cut.get().both(free.get()).apart();
      if (own.isEmpty()) {
        return Optional.empty();
      }
      taken.add(own.get());
      free = Optional.of(free.get().without(cut.get()));
    }
    return Optional.of(taken);
  }
}

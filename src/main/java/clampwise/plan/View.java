package clampwise.plan;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.SeamLine;
import org.locationtech.jts.geom.Envelope;

/** What of a plane has to be in sight. */
final class View {

  private View() {}

  /** The outline of a plane with everything on it, even what lies beyond the edge [m]. */
  static Envelope of(PlaneLayout plane) {
    Envelope view = new Envelope();
    plane.outline().ifPresent(outline -> view.expandToInclude(outline.getEnvelopeInternal()));
    for (FieldLayout field : plane.fields()) {
      view.expandToInclude(Spots.extent(field));
      field.attachments().forEach(a -> view.expandToInclude(a.alongM(), a.upM()));
    }
    plane.obstacles().forEach(o -> view.expandToInclude(o.body().getEnvelopeInternal()));
    return view;
  }

  /** How far a seam is in sight; one without ends runs through all of it [m]. */
  static double[] inSight(SeamLine seam, Envelope view) {
    return new double[] {
      Math.max(seam.fromUpM(), view.getMinY()), Math.min(seam.toUpM(), view.getMaxY())
    };
  }
}

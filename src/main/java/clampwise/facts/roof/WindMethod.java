package clampwise.facts.roof;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.layout.WindRoof;
import clampwise.job.Site.LoadCode;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Decides whether the wind method for panels parallel to the roof is in use. */
final class WindMethod {

  private WindMethod() {}

  /** Says why the edition in force is not known. */
  static String unknown(Layout layout) {
    String what = "the edition of the load standard";
    return layout.job().unreadable().missing(what, "site", "codes", "loads");
  }

  /** Whether the edition in force has the method; empty if the edition is not given. */
  static Optional<Boolean> isInUse(Layout layout, PlaneLayout plane) {
    return new WindRoof(layout.job(), plane.plane(), layout.catalogue().codes())
        .code()
        .map(code -> code != LoadCode.EN_1991);
  }

  /** Gives every field under the method to one, and every field of unknown edition to another. */
  static void each(
      Layout layout,
      BiConsumer<PlaneLayout, FieldLayout> inUse,
      BiConsumer<PlaneLayout, FieldLayout> unknown) {
    for (PlaneLayout plane : layout.planes()) {
      Optional<Boolean> used = isInUse(layout, plane);
      for (FieldLayout field : plane.fields()) {
        if (used.isEmpty()) {
          unknown.accept(plane, field);
        } else if (used.get()) {
          inUse.accept(plane, field);
        }
      }
    }
  }
}

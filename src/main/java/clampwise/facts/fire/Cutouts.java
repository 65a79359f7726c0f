package clampwise.facts.fire;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Fire;
import clampwise.job.Flag;
import clampwise.source.Span;
import java.util.Optional;

/** Holds venting cutouts against the size and spacing that make up for a narrow path. */
final class Cutouts {

  private static final Subject CUTOUTS = Access.subject("cutouts");

  private final Access access;

  Cutouts(Access access) {
    this.access = access;
  }

  void ask() {
    access
        .limit("cutout-spacing-most")
        .ifPresent(every -> access.fire().cutouts().ifPresent(drawn -> ask(drawn, every)));
  }

  private void ask(Fire.Cutouts drawn, Limit every) {
    Optional<Flag> alternating = drawn.alternating();
    if (alternating.isEmpty()) {
      String what = "whether the venting cutouts lie on alternating sides";
      access.missing(VentCutouts.class, CUTOUTS, access.unknown(what, "cutouts"));
      return;
    }
    double alongM = drawn.size().along().m();
    double upM = drawn.size().up().m();
    access.add(
        new VentCutouts(
            CUTOUTS,
            CUTOUTS,
            at(drawn, alternating.get(), every),
            drawn.every().unit(),
            Snap.m(Math.min(alongM, upM)),
            leastM("cutout-short-least"),
            Snap.m(Math.max(alongM, upM)),
            leastM("cutout-long-least"),
            Snap.m(drawn.every().m()),
            Snap.m(every.si()),
            alternating.get().value(),
            Optional.of(every)));
  }

  /** The value that has to change: the size, the distance, or on which sides they lie. */
  private Span at(Fire.Cutouts drawn, Flag alternating, Limit every) {
    double alongM = Snap.m(drawn.size().along().m());
    double upM = Snap.m(drawn.size().up().m());
    if (Math.min(alongM, upM) < leastM("cutout-short-least")
        || Math.max(alongM, upM) < leastM("cutout-long-least")) {
      return drawn.size().at();
    }
    boolean far = Snap.m(drawn.every().m()) > Snap.m(every.si());
    return far || alternating.value() ? drawn.every().at() : alternating.at();
  }

  private double leastM(String what) {
    return Snap.m(access.limit(what).orElseThrow().si());
  }
}

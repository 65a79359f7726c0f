package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Quantity.Slope;
import java.util.Optional;

/** Holds the slopes of planes under the array against the least for their coverings. */
record CoveringSlopes(Weathering weathering) {

  private static final double STEPS_PER_RADIAN = 1e9;

  void ask() {
    for (PlaneLayout plane : weathering.layout().planes()) {
      if (!plane.fields().isEmpty() && plane.panel().isPresent()) {
        ask(plane, plane.panel().get());
      }
    }
  }

  private void ask(PlaneLayout plane, Panel panel) {
    Subject subject = Subjects.plane(plane.name()).part("slope");
    Optional<Slope> slope = plane.plane().slope();
    if (slope.isEmpty()) {
      String what = "the slope of plane " + plane.name();
      weathering.missing(
          SlopeOfCovering.class, subject, weathering.lacks(what, "planes", plane.name(), "slope"));
    } else {
      weathering.add(fact(subject, plane, slope.get(), isSeamed(panel)));
    }
  }

  private static boolean isSeamed(Panel panel) {
    return panel.kind().value() == Panel.Kind.STANDING_SEAM;
  }

  private SlopeOfCovering fact(Subject subject, PlaneLayout plane, Slope slope, boolean seamed) {
    Limit least = weathering.limit(seamed ? "seamed-roof-slope-least" : "screwed-roof-slope-least");
    return new SlopeOfCovering(
        subject,
        subject,
        slope.at(),
        slope.unit(),
        plane.name(),
        plane.panelName(),
        seamed ? "standing seams" : "screwed-down sheets",
        rounded(slope.rad()),
        rounded(least.si()),
        Optional.of(least));
  }

  private static double rounded(double rad) {
    return Math.rint(rad * STEPS_PER_RADIAN) / STEPS_PER_RADIAN;
  }
}

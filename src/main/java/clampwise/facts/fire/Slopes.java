package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Slope;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tells which planes are too flat for access rules. */
final class Slopes {

  /** Angles that differ by less are the same. */
  private static final double SAME_RAD = 1e-9;

  private final Access access;
  private final Optional<Limit> exempt;

  Slopes(Access access) {
    this.access = access;
    this.exempt = access.limit("exempt-slope-most");
  }

  void ask() {
    exempt.ifPresent(most -> access.arrayPlanes().forEach(plane -> ask(plane, most)));
  }

  private void ask(PlaneLayout plane, Limit most) {
    Subject subject = Access.subject("slope").part("planes." + plane.name());
    plane
        .plane()
        .slope()
        .ifPresentOrElse(
            slope -> access.add(fact(subject, plane, slope, most)),
            () -> access.missing(AccessSlope.class, subject, unknown(plane)));
  }

  static String unknown(PlaneLayout plane) {
    return "the slope of plane " + plane.name() + " is not given (slope)";
  }

  private AccessSlope fact(Subject subject, PlaneLayout plane, Slope slope, Limit most) {
    return new AccessSlope(
        subject,
        Access.subject("slope"),
        slope.at(),
        Unit.NUMBER,
        Map.of("slopeRad", slope.unit(), "exemptRad", most.unit()),
        access.rules().toString(),
        plane.name(),
        isFlat(slope, most) ? Math.min(slope.rad(), most.si()) : slope.rad(),
        most.si(),
        Optional.of(most));
  }

  private static boolean isFlat(Slope slope, Limit most) {
    return slope.rad() <= most.si() + SAME_RAD;
  }

  /** Whether the access rules leave a plane out. */
  boolean isExempt(PlaneLayout plane) {
    return exempt.isPresent()
        && plane.plane().slope().filter(slope -> isFlat(slope, exempt.get())).isPresent();
  }

  /** Planes with arrays that the access rules do not leave out. */
  List<PlaneLayout> steepArrays() {
    return access.arrayPlanes().stream().filter(plane -> !isExempt(plane)).toList();
  }
}

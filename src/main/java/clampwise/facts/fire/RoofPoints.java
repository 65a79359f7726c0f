package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.ModuleIndex;
import clampwise.facts.layout.Obstacle;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Fire.VentOperation;
import clampwise.job.Obstruction.Kind;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Looks at what crews go to on the roof: standpipes, hatches and smoke vents. Where modules stand
 * too near a hatch, its way to the edge is left to that finding.
 */
final class RoofPoints {

  private static final String NO_MODULE = "no module";

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final PlaneLayout plane;
  private final ModuleIndex modules;

  RoofPoints(Access access, Outcome<Coverage> coverage, PlaneLayout plane) {
    this.access = access;
    this.coverage = coverage;
    this.plane = plane;
    this.modules = ModuleIndex.of(plane);
  }

  void ask() {
    for (Obstacle thing : plane.obstacles()) {
      Kind kind = thing.obstruction().kind().value();
      if (kind == Kind.STANDPIPE || kind == Kind.SMOKE_VENT) {
        access.limit("straight-path-width").ifPresent(least -> straight(thing, least));
      }
      if (kind == Kind.SMOKE_VENT) {
        access.limit("smoke-vent-path-width").ifPresent(least -> vent(thing, least));
      }
      if (kind == Kind.HATCH) {
        access.limit("hatch-path-width").ifPresent(least -> hatch(thing, least));
      }
    }
  }

  private Subject subject(Obstacle thing) {
    return Subject.of("fire", "planes." + plane.name(), thing.name());
  }

  private Unit shown() {
    return Shown.small(Shown.of(plane));
  }

  private String cure(List<PlacedModule> drop) {
    return drop.isEmpty() ? "" : new Dropped(plane, drop).words(coverage);
  }

  private static Span at(List<PlacedModule> drop, Obstacle thing) {
    return drop.stream().map(PlacedModule::at).min(Span::compareTo).orElseGet(thing::at);
  }

  private void straight(Obstacle thing, Limit least) {
    Straight.widest(plane, thing, least.si())
        .ifPresent(path -> access.add(straightFact(thing, path, least)));
  }

  private StraightPath straightFact(Obstacle thing, Straight.Path path, Limit least) {
    Subject subject = subject(thing).part("straight path");
    return new StraightPath(
        subject,
        subject,
        at(path.inWay(), thing),
        shown(),
        thing.name(),
        Choice.word(thing.obstruction().kind().value()).replace('-', ' '),
        plane.name(),
        path.widthM(),
        Snap.m(least.si()),
        cure(path.inWay()),
        Optional.of(least));
  }

  private void hatch(Obstacle thing, Limit least) {
    Rings ring = new Rings(thing, modules, least.si());
    Subject subject = subject(thing).part("room round it");
    access.add(
        new HatchRing(
            subject,
            subject,
            at(ring.tooNear(), thing),
            shown(),
            thing.name(),
            ring.nearest().map(PlacedModule::name).orElse(NO_MODULE),
            ring.allRoundM(),
            Snap.m(least.si()),
            cure(ring.tooNear()),
            Optional.of(least)));
    if (ring.tooNear().isEmpty()) {
      Straight.widest(plane, thing, least.si())
          .ifPresent(path -> access.add(hatchPath(thing, path, least)));
    }
  }

  private HatchPath hatchPath(Obstacle thing, Straight.Path path, Limit least) {
    Subject subject = subject(thing).part("path to the edge");
    return new HatchPath(
        subject,
        subject,
        at(path.inWay(), thing),
        shown(),
        thing.name(),
        plane.name(),
        path.widthM(),
        Snap.m(least.si()),
        cure(path.inWay()),
        Optional.of(least));
  }

  private void vent(Obstacle thing, Limit least) {
    Rings ring = new Rings(thing, modules, least.si());
    Optional<VentOperation> how = access.fire().smokeVents().map(Choice::value);
    boolean enough = ring.tooNear().isEmpty();
    boolean none = ring.bestSideM() < Snap.m(least.si());
    if (how.isEmpty() && !enough && !none) {
      String what = "how the smoke vents open";
      access.missing(SmokeVentRing.class, ventSubject(thing), access.unknown(what, "smoke-vents"));
    } else {
      boolean oneSide = how.map(VentOperation.GRAVITY::equals).orElse(none);
      access.add(ventFact(thing, ring, oneSide, least));
    }
  }

  private Subject ventSubject(Obstacle thing) {
    return subject(thing).part("room beside it");
  }

  private SmokeVentRing ventFact(Obstacle thing, Rings ring, boolean oneSide, Limit least) {
    return new SmokeVentRing(
        ventSubject(thing),
        ventSubject(thing),
        at(ring.tooNear(), thing),
        shown(),
        thing.name(),
        oneSide ? "at one side at least" : "on all sides",
        oneSide ? ring.bestSideM() : ring.allRoundM(),
        Snap.m(least.si()),
        cure(ring.tooNear()),
        Optional.of(least));
  }
}

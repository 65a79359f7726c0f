package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Fire.EscapeOpening;
import clampwise.job.Named;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/**
 * Looks below escape and rescue openings for modules, and for a pathway up to them. Where modules
 * lie below one, its pathway is left to that finding.
 */
final class EscapeOpenings {

  private static final double TOUCH_M = 1e-6;

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit width;

  EscapeOpenings(Access access, Outcome<Coverage> coverage, Limit width) {
    this.access = access;
    this.coverage = coverage;
    this.width = width;
  }

  void ask() {
    Named<EscapeOpening> openings = access.fire().escapeOpenings();
    openings.all().forEach(this::ask);
    for (String lost : openings.unreadable()) {
      missing(lost, "escape opening " + lost + " could not be read");
    }
  }

  private void missing(String opening, String reason) {
    access.missing(EscapeModules.class, subject(opening), reason);
    access.missing(EscapePath.class, subject(opening), reason);
  }

  private static Subject subject(String opening) {
    return Access.subject("escape openings").part(opening);
  }

  private void ask(Named.Item<EscapeOpening> opening) {
    String name = opening.name().value();
    Optional<PlaneLayout> plane =
        access.layout().planes().stream()
            .filter(one -> one.name().equals(opening.value().plane().value()))
            .findFirst();
    if (plane.isEmpty()) {
      missing(name, "the plane below escape opening " + name + " is not known");
    } else if (plane.get().outline().isEmpty()) {
      missing(name, plane.get().reading().outlineUnknown());
    } else {
      ask(name, opening.value(), plane.get());
    }
  }

  private void ask(String name, EscapeOpening opening, PlaneLayout plane) {
    List<PlacedModule> below =
        Access.modules(plane).stream().filter(module -> isBelow(module, opening)).toList();
    access.add(modulesFact(name, opening, new Dropped(plane, below)));
    if (below.isEmpty()) {
      access.add(pathFact(name, opening, plane));
    }
  }

  private static boolean isBelow(PlacedModule module, EscapeOpening opening) {
    double leftM = opening.at().along().m();
    return module.rightM() > leftM + TOUCH_M
        && module.leftM() < leftM + opening.width().m() - TOUCH_M
        && module.bottomM() < opening.at().up().m() - TOUCH_M;
  }

  private EscapeModules modulesFact(String name, EscapeOpening opening, Dropped below) {
    return new EscapeModules(
        subject(name),
        subject(name),
        below.at().orElseGet(() -> opening.at().at()),
        Unit.NUMBER,
        name,
        below.plane().name(),
        ShortNames.of(below.modules()),
        below.modules().size(),
        0,
        below.modules().isEmpty() ? "" : below.words(coverage));
  }

  private EscapePath pathFact(String name, EscapeOpening opening, PlaneLayout plane) {
    double upM = opening.at().up().m();
    List<Blocker> blockers =
        Access.modules(plane).stream()
            .filter(module -> module.bottomM() < upM - TOUCH_M)
            .map(Blocker::of)
            .toList();
    Way way = Way.toOpening(plane, opening, width.si());
    return new EscapePath(
        subject(name).part("pathway"),
        subject(name).part("pathway"),
        opening.at().at(),
        access.shown(),
        name,
        plane.name(),
        width.si(),
        Corridors.count(blockers, way, width.si(), 1),
        1,
        Optional.of(width));
  }
}

package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for pathways on the roof of a dwelling: on enough planes, one of them on the street side.
 * Where planes are too few, the side is left to that finding.
 */
final class Pathways {

  private static final Subject PLANES = Access.subject("pathways");
  private static final Subject STREET = Access.subject("street side");

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit width;
  private final PathwayCount count;
  private final Set<String> street;

  Pathways(Access access, Outcome<Coverage> coverage, Limit width, PathwayCount count) {
    this.access = access;
    this.coverage = coverage;
    this.width = width;
    this.count = count;
    this.street = access.fire().streetSide().stream().map(Text::value).collect(Collectors.toSet());
  }

  /** Asks for planes enough, then for the street side, then for each plane with an array. */
  void ask(List<PlaneLayout> steep) {
    Optional<Limit> least = access.limit("pathway-planes-least");
    if (least.map(this::areEnough).orElse(true)) {
      new ServedPlanes(access, coverage, width, count).ask(steep);
    }
  }

  /** Whether planes enough have a pathway, or it is not known that they do not. */
  private boolean areEnough(Limit least) {
    List<PlaneLayout> walkable = planes().stream().filter(count::isWalkable).toList();
    boolean enough = walkable.size() >= least.si();
    Optional<String> unknown = enough ? Optional.empty() : unknownPlane();
    if (unknown.isPresent()) {
      missing(unknown.get(), PLANES, PathwayPlanes.class);
    } else {
      access.add(planesFact(walkable, least, enough ? "" : cure(least, walkable)));
    }
    if (enough || unknown.isPresent()) {
      access.limit("street-pathways-least").ifPresent(one -> street(walkable, one));
    }
    return enough || unknown.isPresent();
  }

  private List<PlaneLayout> planes() {
    return access.layout().planes();
  }

  /** Why a plane without a pathway may yet be among those that are not known. */
  private Optional<String> unknownPlane() {
    Optional<String> unread =
        planes().stream()
            .filter(plane -> plane.outline().isEmpty())
            .map(plane -> plane.reading().outlineUnknown())
            .findFirst();
    return unread.or(
        () ->
            Coverage.isWholeRoof(access.layout()).orElse(false)
                ? Optional.empty()
                : Optional.of(
                    "the job does not draw the whole roof (fire: whole-roof); a plane that is not drawn may have the"
                        + " pathway"));
  }

  private void missing(String reason, Subject subject, Class<? extends Fact> question) {
    access.missing(question, subject, reason);
  }

  private PathwayPlanes planesFact(List<PlaneLayout> walkable, Limit least, String cure) {
    return new PathwayPlanes(
        PLANES,
        PLANES,
        cure.isEmpty() ? access.at() : at(drops()),
        access.shown(),
        width.si(),
        walkable.isEmpty() ? "no plane" : names(walkable),
        walkable.size(),
        least.si(),
        cure,
        Optional.of(least));
  }

  private String cure(Limit least, List<PlaneLayout> walkable) {
    long lacking = Math.round(least.si()) - walkable.size();
    String each =
        drops().stream()
            .limit(lacking)
            .map(drop -> drop.words(coverage))
            .collect(Collectors.joining("; and "));
    return each.isEmpty() ? "make room for a straight path from eave to ridge" : each;
  }

  /** What would clear planes that have no pathway; the street side first, then the fewest. */
  private List<Dropped> drops() {
    boolean streetWalkable = planes().stream().filter(this::isStreet).anyMatch(count::isWalkable);
    return planes().stream()
        .filter(plane -> plane.outline().isPresent() && !count.isWalkable(plane))
        .flatMap(plane -> Clearing.of(plane, width.si()).stream())
        .sorted(
            Comparator.<Dropped, Boolean>comparing(
                    drop -> streetWalkable || !isStreet(drop.plane()))
                .thenComparing(drop -> drop.modules().size()))
        .toList();
  }

  private boolean isStreet(PlaneLayout plane) {
    return street.contains(plane.name());
  }

  private Span at(List<Dropped> drops) {
    return drops.stream().flatMap(drop -> drop.at().stream()).findFirst().orElseGet(access::at);
  }

  private void street(List<PlaneLayout> walkable, Limit least) {
    List<PlaneLayout> side = planes().stream().filter(this::isStreet).toList();
    if (side.isEmpty()) {
      String what = "which planes are on the street or driveway side";
      missing(access.unknown(what, "street-side"), STREET, StreetPathways.class);
      return;
    }
    List<PlaneLayout> found = side.stream().filter(walkable::contains).toList();
    List<Dropped> drops =
        new ArrayList<>(
            side.stream()
                .filter(plane -> plane.outline().isPresent())
                .flatMap(plane -> Clearing.of(plane, width.si()).stream())
                .sorted(Comparator.comparing(drop -> drop.modules().size()))
                .toList());
    access.add(streetFact(names(side), found.size(), least, drops));
  }

  private StreetPathways streetFact(String side, int found, Limit least, List<Dropped> drops) {
    return new StreetPathways(
        STREET,
        STREET,
        found == 0 ? at(drops) : access.at(),
        access.shown(),
        width.si(),
        side,
        found,
        least.si(),
        drops.stream()
            .findFirst()
            .map(drop -> drop.words(coverage))
            .orElse("make room for a straight path from eave to ridge"),
        Optional.of(least));
  }

  static String names(List<PlaneLayout> planes) {
    return planes.stream().map(PlaneLayout::name).collect(Collectors.joining(", "));
  }
}

package clampwise.facts.fire;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Subjects;
import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.weight.ClearSpace;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Fire;
import clampwise.job.Fire.Listing;
import clampwise.job.Fire.RoofClass;
import clampwise.job.Fire.Slopes;
import clampwise.job.LengthRange;
import clampwise.job.ModuleType;
import clampwise.job.Quantity.Slope;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Holds the fire listing of modules and mount against the class, slope and space of the roof. */
final class FireClasses {

  private static final Subject LISTING = Access.subject("listing");
  private static final double SAME_RAD = 1e-9;

  private final Layout layout;
  private final Fire fire;
  private final Limits limits;
  private final Answers answers;

  FireClasses(Layout layout, Fire fire, Limits limits, Answers answers) {
    this.layout = layout;
    this.fire = fire;
    this.limits = limits;
    this.answers = answers;
  }

  static final List<Class<? extends Fact>> TYPES =
      List.of(RoofFireClass.class, ModuleFireType.class, ListedSlope.class, ListedClearSpace.class);

  void ask() {
    if (fire.listing().isEmpty()) {
      String what = "the fire listing of modules and mount";
      String reason = layout.job().unreadable().missing(what, "fire", "listing");
      TYPES.forEach(type -> missing(type, LISTING, reason));
    } else {
      ask(fire.listing().get());
    }
  }

  private void ask(Listing listing) {
    fire.roofClass()
        .ifPresentOrElse(
            required -> answers.add(classFact(listing, required)),
            () -> missing(RoofFireClass.class, LISTING, unread("the fire class the roof needs")));
    types().forEach((name, type) -> type(listing, name, type));
    for (PlaneLayout plane : layout.planes()) {
      if (!plane.fields().isEmpty()) {
        slope(listing, plane);
      }
      plane.fields().forEach(field -> space(listing, field));
    }
  }

  private String unread(String what) {
    return layout.job().unreadable().missing(what, "fire", "roof-class");
  }

  private void missing(Class<? extends Fact> question, Subject subject, String reason) {
    answers.missing(question, subject, reason, Subjects.at(subject, layout.job()));
  }

  private RoofFireClass classFact(Listing listing, Choice<RoofClass> required) {
    return new RoofFireClass(
        LISTING,
        LISTING,
        listing.listedClass().at(),
        Unit.NUMBER,
        listing.listedClass().toString(),
        required.toString(),
        rank(listing.listedClass().value()),
        rank(required.value()));
  }

  private static int rank(RoofClass roofClass) {
    return RoofClass.values().length - roofClass.ordinal();
  }

  private Map<String, ModuleType> types() {
    Map<String, ModuleType> types = new LinkedHashMap<>();
    layout.fields().stream()
        .flatMap(field -> field.modules().stream())
        .forEach((PlacedModule module) -> types.putIfAbsent(module.typeName(), module.type()));
    return types;
  }

  private void type(Listing listing, String name, ModuleType type) {
    Subject subject = LISTING.part("modules." + name);
    if (listing.moduleTypes().isEmpty()) {
      missing(
          ModuleFireType.class,
          subject,
          "the module types of the fire listing are not given (fire: listing: module-types)");
    } else if (type.fireType().isEmpty()) {
      String what = "the fire type of module " + name;
      String reason = layout.job().unreadable().missing(what, "modules", name, "fire-type");
      missing(ModuleFireType.class, subject, reason);
    } else {
      answers.add(typeFact(subject, listing, name, type.fireType().get()));
    }
  }

  private static ModuleFireType typeFact(Subject subject, Listing listing, String name, Text type) {
    boolean listed =
        listing.moduleTypes().stream()
            .anyMatch(text -> text.value().equalsIgnoreCase(type.value()));
    return new ModuleFireType(
        subject,
        subject,
        type.at(),
        Unit.NUMBER,
        name,
        type.value(),
        listing.moduleTypes().stream().map(Text::value).collect(Collectors.joining(", ")),
        listed);
  }

  private void slope(Listing listing, PlaneLayout plane) {
    Subject subject = LISTING.part("planes." + plane.name());
    Optional<Slope> slope = plane.plane().slope();
    if (listing.slopes().isEmpty()) {
      missing(
          ListedSlope.class,
          subject,
          "the roof slopes of the fire listing are not given (fire: listing: slopes)");
    } else if (slope.isEmpty()) {
      missing(ListedSlope.class, subject, clampwise.facts.fire.Slopes.unknown(plane));
    } else {
      answers.add(slopeFact(subject, plane, slope.get(), listing.slopes().get().value()));
    }
  }

  private ListedSlope slopeFact(Subject subject, PlaneLayout plane, Slope slope, Slopes listed) {
    Limit steep = limits.get("fire-steep-slope-least");
    boolean isSteep = slope.rad() >= steep.si() - SAME_RAD;
    return new ListedSlope(
        subject,
        subject,
        slope.at(),
        Unit.NUMBER,
        Map.of("slopeRad", slope.unit(), "steepRad", steep.unit()),
        plane.name(),
        slope.rad(),
        steep.si(),
        Choice.word(listed),
        listed == Slopes.ANY || (listed == Slopes.STEEP) == isSteep,
        Optional.of(steep));
  }

  private void space(Listing listing, FieldLayout field) {
    Subject subject = Subjects.field(field.name()).part("fire listing");
    Optional<ClearSpace> space = ClearSpace.of(field);
    if (listing.clearSpace().isEmpty()) {
      String reason =
          "the clear space of the fire listing is not given (fire: listing: clear-space)";
      missing(ListedClearSpace.class, subject, reason);
    } else if (space.isEmpty()) {
      missing(
          ListedClearSpace.class, subject, ClearSpace.unknown(field, layout.job().unreadable()));
    } else {
      answers.add(spaceFact(subject, field, space.get(), listing.clearSpace().get()));
    }
  }

  private static ListedClearSpace spaceFact(
      Subject subject, FieldLayout field, ClearSpace space, LengthRange listed) {
    double toMinM = Math.abs(space.m() - listed.min().m());
    double toMaxM = Math.abs(space.m() - listed.max().m());
    return new ListedClearSpace(
        subject,
        subject,
        field.field().topHeight().map(top -> top.at()).orElseGet(field::at),
        space.unit(),
        Map.of("minM", listed.min().unit(), "maxM", listed.max().unit()),
        field.name(),
        space.m(),
        listed.min().m(),
        listed.max().m(),
        toMinM <= toMaxM ? listed.min().m() : listed.max().m());
  }
}

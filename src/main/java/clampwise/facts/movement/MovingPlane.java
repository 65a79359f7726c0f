package clampwise.facts.movement;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.thermal.Metal;
import clampwise.calc.thermal.Swing;
import clampwise.catalogue.ExpansionTable;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Quantity.Temperature;
import clampwise.job.Site;
import clampwise.source.Span;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A roof plane that carries modules, with what makes it move.
 *
 * @param panel its covering
 */
record MovingPlane(Layout layout, PlaneLayout plane, Panel panel, Limits limits, Answers answers) {

  /** Frames of modules, and what is clamped to them. */
  private static final String FRAMES = "aluminium";

  /** A question that is asked of every plane with modules whose covering is known. */
  static Question each(Consumer<MovingPlane> question) {
    return (layout, limits, answers) ->
        layout.planes().stream()
            .filter(plane -> !plane.fields().isEmpty())
            .flatMap(plane -> of(layout, plane, limits, answers).stream())
            .forEach(question);
  }

  static Optional<MovingPlane> of(
      Layout layout, PlaneLayout plane, Limits limits, Answers answers) {
    return plane.panel().map(panel -> new MovingPlane(layout, plane, panel, limits, answers));
  }

  void missing(Class<? extends Fact> question, Subject subject, String reason, Span at) {
    answers.missing(question, subject, reason, at);
  }

  /** The coldest and the hottest that roof and frames get. */
  Outcome<Swing> swing() {
    if (lowest().isEmpty()) {
      return new NotApplicable<>("the lowest temperature of the site " + siteVerb());
    }
    if (isLost("hottest")) {
      return new NotApplicable<>("how hot " + name() + " gets could not be read");
    }
    Swing swing = new Swing(lowest().get().celsius(), hottest().celsius());
    return swing.differenceK() < 0
        ? new NotApplicable<>(name() + " is never hotter than the lowest temperature of the site")
        : new Result<>(swing);
  }

  /** Where the input would be written that the temperatures lack. */
  Span swingAt() {
    return lowest().isEmpty() ? layout.job().at("site", "lowest-temperature") : at();
  }

  /** What the covering's temperature is limited by in sources, where the job says nothing. */
  Optional<Limit> hottestFrom() {
    return panel.hottest().isPresent()
        ? Optional.empty()
        : Optional.of(limits.get("panel-hottest"));
  }

  Temperature hottest() {
    Limit usual = limits.get("panel-hottest");
    return panel.hottest().orElseGet(() -> new Temperature(usual.si(), usual.unit(), at()));
  }

  Optional<Temperature> lowest() {
    return layout.job().site().flatMap(Site::lowestTemperature);
  }

  private String siteVerb() {
    boolean lost = layout.job().unreadable().touches("site", "lowest-temperature");
    return lost ? "could not be read" : "is not given (site: lowest-temperature)";
  }

  /** The metal of the covering where it grows most. */
  Outcome<Metal> sheet() {
    return word().then(word -> new Result<>(table().most(word)));
  }

  /** Frames and covering where they differ most. */
  Outcome<ExpansionTable.Pair> framesAndSheet() {
    return word().then(word -> new Result<>(table().furthest(FRAMES, word)));
  }

  /** The steel of the building. */
  Metal structure() {
    return table().most("steel");
  }

  private ExpansionTable table() {
    return ExpansionTable.of(layout.catalogue().codes());
  }

  private Outcome<String> word() {
    return panel
        .metal()
        .<Outcome<String>>map(
            metal ->
                new Result<>(
                    switch (metal.value()) {
                      case STEEL -> "steel";
                      case ALUMINIUM -> "aluminium-sheet";
                      case COPPER -> "copper";
                      case ZINC -> "zinc";
                      case STAINLESS_STEEL -> "stainless-304";
                    }))
        .orElseGet(() -> new NotApplicable<>(missing("the metal of " + name(), "metal")));
  }

  /** Says why a key of the covering is not known. */
  String missing(String what, String key) {
    return layout.job().unreadable().missing(what, "panels", name(), key);
  }

  /** Name of the covering. */
  String name() {
    return plane.panelName();
  }

  /** Where a missing value of the covering would be written. */
  Span at() {
    return Optional.ofNullable(layout.job().panels().items().get(name()))
        .map(Named.Item::name)
        .map(text -> text.at())
        .orElse(plane.plane().panel().at());
  }

  /** Whether a key of the covering is written but could not be read. */
  boolean isLost(String key) {
    return layout.job().unreadable().touches("panels", name(), key);
  }

  /** Whether a key of the plane is written but could not be read. */
  boolean isPlaneKeyLost(String key) {
    return layout.job().unreadable().touches("planes", plane.name(), key);
  }
}

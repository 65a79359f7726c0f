package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Fire;
import clampwise.job.Fire.Occupancy;
import clampwise.job.Job;
import clampwise.job.Site;
import clampwise.source.Span;
import java.util.List;
import java.util.Optional;

/** All questions about access to the roof in a fire, and about its fire class. */
public final class FireQuestions {

  public static final List<Question> ALL = List.of(FireQuestions::ask);

  private static final List<Class<? extends Fact>> OF_ACCESS =
      List.of(
          AccessExemption.class,
          FireEdition.class,
          AccessSlope.class,
          PathwayPlanes.class,
          StreetPathways.class,
          PlanePathways.class,
          PathObstruction.class,
          RidgeSetback.class,
          EscapeModules.class,
          EscapePath.class,
          PerimeterPath.class,
          ArrayBlock.class,
          SmokeAisle.class,
          VentCutouts.class,
          StraightPath.class,
          HatchRing.class,
          HatchPath.class,
          SmokeVentRing.class,
          HipSetback.class,
          ArraySides.class,
          ClearPath.class);

  private FireQuestions() {}

  private static void ask(Layout layout, Limits limits, Answers answers) {
    CoverageClaims.ask(layout, limits, answers);
    if (layout.fields().isEmpty()) {
      return;
    }
    Job job = layout.job();
    Optional<Fire> fire = job.fire();
    fire.ifPresent(written -> new FireClasses(layout, written, limits, answers).ask());
    if (fire.flatMap(Fire::rules).isEmpty() || fire.flatMap(Fire::occupancy).isEmpty()) {
      unasked(job, fire, answers);
      return;
    }
    Occupancy occupancy = fire.get().occupancy().orElseThrow().value();
    Limits asked = layout.catalogue().codes().fire();
    Choice<Fire.RuleSet> rules = fire.get().rules().orElseThrow();
    ask(new Access(layout, fire.get(), rules, occupancy, asked, answers));
  }

  /** One reason for all of them: nothing can be asked before the rule set is known. */
  private static void unasked(Job job, Optional<Fire> fire, Answers answers) {
    boolean noRules = fire.flatMap(Fire::rules).isEmpty();
    String reason =
        noRules
            ? noRules(job)
            : job.unreadable().missing("the occupancy for the fire rules", "fire", "occupancy");
    Span at = fire.flatMap(Fire::rules).map(Choice::at).orElseGet(() -> job.at("fire"));
    unasked(OF_ACCESS, reason, at, answers);
    if (fire.isEmpty()) {
      unasked(FireClasses.TYPES, reason, at, answers);
    }
  }

  /** The code in force is easily taken for the rule set that the layout follows. */
  private static String noRules(Job job) {
    String reason = job.unreadable().missing("the fire rule set", "fire", "rules");
    boolean code = job.site().flatMap(Site::codes).flatMap(Site.Codes::fire).isPresent();
    return code ? reason + "; the code under site: codes does not choose one" : reason;
  }

  private static void unasked(
      List<Class<? extends Fact>> types, String reason, Span at, Answers answers) {
    types.forEach(type -> answers.missing(type, Subject.of("fire"), reason, at));
  }

  private static void ask(Access access) {
    new AccessRules(access).ask();
    if (access.fire().exempt().isPresent() || access.isLost("exempt")) {
      return;
    }
    Outcome<Coverage> coverage = Coverage.of(access.layout());
    new LocalRules(access, coverage).ask();
    if (access.occupancy() == Occupancy.DWELLING) {
      dwelling(access, coverage);
    } else {
      new Commercial(access, coverage).ask();
    }
  }

  private static void dwelling(Access access, Outcome<Coverage> coverage) {
    Slopes slopes = new Slopes(access);
    slopes.ask();
    List<PlaneLayout> steep = slopes.steepArrays();
    access
        .limit("escape-path-width")
        .ifPresent(width -> new EscapeOpenings(access, coverage, width).ask());
    if (!steep.isEmpty()) {
      pathwayWidth(access).ifPresent(width -> pathways(access, coverage, width, steep));
      access
          .limit("hip-distance")
          .ifPresent(least -> new HipSetbacks(access, coverage, least).ask(steep));
      access
          .limit("ridge-wide")
          .ifPresent(wide -> new RidgeSetbacks(access, coverage, wide).ask(steep));
    }
  }

  /** The width of pathways, where they are asked for by plane. */
  private static Optional<Limit> pathwayWidth(Access access) {
    return access
        .limit("pathway-planes-least")
        .or(() -> access.limit("own-plane-pathways-least"))
        .flatMap(asked -> access.limit("pathway-width"));
  }

  private static void pathways(
      Access access, Outcome<Coverage> coverage, Limit width, List<PlaneLayout> steep) {
    double enough = access.limit("own-plane-pathways-least").map(Limit::si).orElse(1.0);
    PathwayCount count = new PathwayCount(width.si(), (int) Math.round(enough));
    new Pathways(access, coverage, width, count).ask(steep);
    new PathObstructions(access, width, count).ask();
  }
}

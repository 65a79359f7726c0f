package clampwise.facts.durability;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.job.Circuit;
import clampwise.job.Electrical;
import clampwise.job.Job;
import clampwise.job.Metal;
import clampwise.job.Named;
import clampwise.job.Obstruction;
import clampwise.job.Panel;
import clampwise.job.Plane;
import clampwise.job.Site;
import java.util.List;
import java.util.Optional;

/** All questions about metals, water, heat and the age of the roof. */
public final class DurabilityQuestions {

  public static final List<Question> ALL = List.of(DurabilityQuestions::ask);

  private DurabilityQuestions() {}

  private static void ask(Layout layout, Limits limits, Answers answers) {
    if (layout.fields().isEmpty()) {
      return;
    }
    Weathering weathering = new Weathering(layout, limits, answers);
    Job job = layout.job();
    boolean state = job.roof().isPresent();
    if (state || hasAir(job) || hasUnusualMetal(job)) {
      metals(weathering);
    } else {
      unsaid(ofMetals(), weathering);
    }
    water(weathering);
    if (state) {
      state(weathering);
    } else {
      unsaid(OfState.unasked(weathering), weathering);
    }
  }

  private static boolean hasAir(Job job) {
    Optional<Site> site = job.site();
    return site.flatMap(Site::corrosivity).isPresent() || site.flatMap(Site::setting).isPresent();
  }

  /**
   * Metals that go wrong in any air are asked about even where nothing else of the topic is said.
   */
  private static boolean hasUnusualMetal(Job job) {
    for (Named.Item<Panel> panel : job.panels().all()) {
      Optional<Metal> metal = panel.value().metal().map(written -> written.value());
      if (metal.isPresent() && metal.get() != Metal.STEEL && metal.get() != Metal.ALUMINIUM) {
        return true;
      }
    }
    for (Named.Item<Plane> plane : job.planes().all()) {
      for (Named.Item<Obstruction> thing : plane.value().obstructions().all()) {
        if (thing.value().metal().isPresent()) {
          return true;
        }
      }
    }
    return hasConductorOnRoof(job);
  }

  private static boolean hasConductorOnRoof(Job job) {
    Optional<Electrical> electrical = job.electrical();
    if (electrical.isPresent()) {
      for (Named.Item<Circuit> circuit : electrical.get().circuits().all()) {
        if (circuit.value().grounding().flatMap(Circuit.Grounding::lies).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }

  private static void metals(Weathering weathering) {
    Couples couples = Couples.of(weathering);
    new SheetContacts(weathering, couples).ask();
    new FrameContacts(weathering, couples).ask();
    new Runoffs(weathering, couples).ask();
    new StainlessGrades(weathering).ask();
    new ScrewMetals(weathering).ask();
    Settings.ask(weathering);
  }

  private static void water(Weathering weathering) {
    new EdgeDistances(weathering).ask();
    ObstacleDistances.ask(weathering);
    new Daylight(weathering).ask();
    new Penetrations(weathering).ask();
    new BracketScrews(weathering).ask();
    new CoveringSlopes(weathering).ask();
    Heat heat = new Heat(weathering);
    heat.ask();
    new AirGaps(weathering, heat).ask();
  }

  private static void state(Weathering weathering) {
    weathering
        .job()
        .roof()
        .ifPresent(
            roof -> {
              new RoofLives(weathering, roof).ask();
              new ZincLives(weathering, roof).ask();
              new WoodContacts(weathering, roof).ask();
              new SheetCare(weathering, roof).ask();
              new RoofState(weathering, roof).ask();
            });
  }

  private static List<Class<? extends Fact>> ofMetals() {
    return List.of(MetalCouple.class, StainlessInAir.class, ScrewInAir.class);
  }

  private static void unsaid(List<Class<? extends Fact>> types, Weathering weathering) {
    String reason =
        weathering.unreadable().holds("roof")
            ? "what the job says of the state of the roof could not be read"
            : "the job says nothing about the state of the roof and what meets it (roof)";
    for (Class<? extends Fact> type : types) {
      weathering.missing(type, Weathering.ROOF, reason);
    }
  }
}

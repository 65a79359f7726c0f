package clampwise.facts.takeoff;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.job.Takeoff;
import clampwise.takeoff.Counts;
import java.util.List;
import java.util.Optional;

/** All questions about parts lists, crew time and freight. */
public final class TakeoffQuestions {

  public static final List<Question> ALL = List.of(TakeoffQuestions::ask);

  private TakeoffQuestions() {}

  /** Without a word on the topic, nothing of it is begun. */
  private static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Takeoff> takeoff = layout.job().takeoff();
    if (takeoff.isEmpty()) {
      types().forEach(type -> unsaid(type, layout, answers));
      return;
    }
    Limits rules = layout.catalogue().codes().takeoff();
    TakeoffAsked asked = new TakeoffAsked(layout, takeoff.get(), Counts.of(layout), rules, answers);
    PartsLists.ask(asked);
    CrewTimes.ask(asked);
    Freights.ask(asked);
    Stagings.ask(asked);
  }

  private static List<Class<? extends Fact>> types() {
    return List.of(
        OrderedPart.class,
        CrewTotal.class,
        CrewPhases.class,
        PalletCount.class,
        FreightMass.class,
        PalletPlace.class,
        StagedLoad.class);
  }

  private static void unsaid(Class<? extends Fact> type, Layout layout, Answers answers) {
    String reason =
        layout.job().unreadable().holds("takeoff")
            ? "what the job says of its order could not be read"
            : "the job says nothing about its parts list, crew time and freight (takeoff)";
    answers.missing(type, TakeoffAsked.TAKEOFF, reason, layout.job().at("takeoff"));
  }
}

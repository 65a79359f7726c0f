package clampwise.facts.takeoff;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.finding.Subject;
import clampwise.job.Quantity.Duration;
import clampwise.job.Takeoff.CrewTime;
import clampwise.takeoff.Crew;
import clampwise.takeoff.CrewPhase;
import clampwise.takeoff.PartKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Asks whether the time of the quotation holds all phases of the work. */
final class CrewTimes {

  private static final Subject CREW = TakeoffAsked.TAKEOFF.part("crew time");

  private final TakeoffAsked asked;
  private final CrewTime time;

  private CrewTimes(TakeoffAsked asked, CrewTime time) {
    this.asked = asked;
    this.time = time;
  }

  static void ask(TakeoffAsked asked) {
    Optional<CrewTime> time = asked.takeoff().crewTime();
    Optional<String> unknown = asked.counts().unknown(PartKind.END_CLAMP);
    if (asked.isLost("crew-time")) {
      missing(asked, "the crew time could not be read");
    } else if (time.isEmpty()) {
      missing(asked, "no crew time is given (takeoff: crew-time)");
    } else if (unknown.isPresent()) {
      missing(asked, unknown.get());
    } else {
      new CrewTimes(asked, time.get()).ask();
    }
  }

  private static void missing(TakeoffAsked asked, String reason) {
    asked.missing(CrewTotal.class, CREW, reason);
    asked.missing(CrewPhases.class, CREW, reason);
  }

  /** A time in all and times by phase are two ways to say it; each is asked what it can answer. */
  private void ask() {
    Map<CrewPhase, Duration> phases = phases();
    if (!phases.isEmpty()) {
      asked.answers().add(phases(phases));
    } else if (time.total().isPresent()) {
      asked.answers().add(total(time.total().get()));
    } else {
      missing(asked, "the crew time has neither a total nor a phase (takeoff: crew-time: total)");
    }
  }

  private CrewTotal total(Duration total) {
    Limit share = asked.rules().get("crew-share-least");
    Crew usual = Crew.of(asked.counts(), asked.rules());
    double placementS = usual.seconds(CrewPhase.PLACEMENT);
    return new CrewTotal(
        CREW,
        total.at(),
        total.unit(),
        Map.of("placementS", ShownUnits.time(placementS), "allS", ShownUnits.time(usual.seconds())),
        asked.counts().of(PartKind.MODULE),
        Snap.m(total.s()),
        placementS,
        usual.seconds(),
        Snap.m(share.si() * usual.seconds()),
        Optional.of(share));
  }

  private Map<CrewPhase, Duration> phases() {
    Map<CrewPhase, Duration> phases = new EnumMap<>(CrewPhase.class);
    time.setUp().ifPresent(given -> phases.put(CrewPhase.SET_UP, given));
    time.attachments().ifPresent(given -> phases.put(CrewPhase.ATTACHMENTS, given));
    time.placement().ifPresent(given -> phases.put(CrewPhase.PLACEMENT, given));
    time.clamps().ifPresent(given -> phases.put(CrewPhase.CLAMPS, given));
    time.bonding().ifPresent(given -> phases.put(CrewPhase.BONDING, given));
    time.wiring().ifPresent(given -> phases.put(CrewPhase.WIRING, given));
    return phases;
  }

  private CrewPhases phases(Map<CrewPhase, Duration> stated) {
    Crew usual = Crew.of(asked.counts(), asked.rules());
    List<String> left = new ArrayList<>();
    double leftS = 0;
    for (CrewPhase phase : CrewPhase.values()) {
      double seconds = usual.seconds(phase);
      if (seconds > 0 && !stated.containsKey(phase)) {
        left.add(phase.word());
        leftS += seconds;
      }
    }
    return new CrewPhases(
        CREW.part("phases"),
        stated.values().iterator().next().at(),
        ShownUnits.time(leftS),
        words(stated.keySet().stream().map(CrewPhase::word).toList()),
        left.size(),
        words(left),
        leftS);
  }

  private static String words(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }
}

package clampwise.facts.electrical;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.job.Electrical;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** All questions about strings, conductors and protection. */
public final class ElectricalQuestions {

  public static final List<Question> ALL = List.of(ElectricalQuestions::ask);

  private ElectricalQuestions() {}

  /** Without a word on the topic, nothing of it is begun. */
  private static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Electrical> electrical = layout.job().electrical();
    if (electrical.isEmpty()) {
      types().forEach(type -> unsaid(type, layout, answers));
      if (layout.job().claims().filter(c -> !c.stringVoltages().isEmpty()).isPresent()) {
        unsaid(VoltageClaim.class, layout, answers);
      }
    } else {
      Wiring wiring = new Wiring(layout, electrical.get(), limits, answers);
      questions().forEach(question -> question.accept(wiring));
    }
  }

  private static List<Consumer<Wiring>> questions() {
    return List.of(
        CodeQuestions::ask,
        StringVoltages::ask,
        StringTallies::ask,
        VoltageClaims::ask,
        Groundings::ask,
        Devices::ask,
        CableQuestions::ask,
        ConnectorQuestions::ask,
        ShutdownQuestions::ask,
        LabelQuestions::ask,
        ArcQuestions::ask,
        BondTestQuestions::ask,
        LugQuestions::ask,
        BondFuses::ask);
  }

  private static List<Class<? extends Fact>> types() {
    return List.of(
        StringVoltage.class,
        StringTally.class,
        GroundingSize.class,
        GroundingExposure.class,
        GroundPathMade.class,
        DeviceRating.class,
        SeriesFuse.class,
        CableSupport.class,
        ClipCount.class,
        ClipRange.class,
        ClipLoad.class,
        CableOnRoof.class,
        CableEdges.class,
        CableBend.class,
        ConnectorPair.class,
        ConnectorPlace.class,
        ShutdownStart.class,
        ShutdownVoltage.class,
        ShutdownTime.class,
        ShutdownInside.class,
        LabelNeeded.class,
        LabelLetters.class,
        LabelReflects.class,
        ArcProtection.class,
        BondTestAsked.class,
        LugWire.class,
        LugMetal.class,
        JumperWire.class,
        BondFuse.class);
  }

  private static void unsaid(Class<? extends Fact> type, Layout layout, Answers answers) {
    String reason =
        layout.job().unreadable().holds("electrical")
            ? "what the job says of strings and conductors could not be read"
            : "the job says nothing about strings, conductors and their protection (electrical)";
    answers.missing(type, Wiring.ELECTRICAL, reason, layout.job().at("electrical"));
  }
}

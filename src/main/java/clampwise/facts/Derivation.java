package clampwise.facts;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.facts.accuracy.AccuracyQuestions;
import clampwise.facts.bonding.BondingQuestions;
import clampwise.facts.clamps.ClampQuestions;
import clampwise.facts.documents.DocumentQuestions;
import clampwise.facts.durability.DurabilityQuestions;
import clampwise.facts.electrical.ElectricalQuestions;
import clampwise.facts.fire.FireQuestions;
import clampwise.facts.install.InstallQuestions;
import clampwise.facts.layout.BondingNames;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LayoutBuilder;
import clampwise.facts.loads.LoadQuestions;
import clampwise.facts.movement.MovementQuestions;
import clampwise.facts.roof.RoofQuestions;
import clampwise.facts.survey.SurveyQuestions;
import clampwise.facts.takeoff.TakeoffQuestions;
import clampwise.facts.weight.WeightQuestions;
import clampwise.job.Job;
import clampwise.source.Problems;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Turns a job into facts: lays it out in space and asks every question about it. */
public final class Derivation {

  private Derivation() {}

  /** All facts of a job; what cannot be laid out as written is added to the problems. */
  public static Facts of(Job job, Catalogue catalogue, Limits limits, Problems problems) {
    Layout layout = new LayoutBuilder(limits).build(job, catalogue, problems);
    BondingNames.check(layout, problems);
    Answers answers = answers(layout, limits);
    NoModules.tell(layout, answers);
    return new Facts(layout, answers.facts(), answers.missing());
  }

  /** Questions are asked on all cores; the order of the answers is always the same. */
  private static Answers answers(Layout layout, Limits limits) {
    Answers answers = new Answers();
    OtherCores.all(questions().map(question -> asked(question, layout, limits)).toList())
        .forEach(answers::addAll);
    return answers;
  }

  /** What takes longest comes first, so that no core is left waiting for it at the end. */
  private static Stream<Question> questions() {
    return Stream.of(
            LoadQuestions.ALL,
            ClampQuestions.ALL,
            RoofQuestions.ALL,
            BondingQuestions.ALL,
            SurveyQuestions.ALL,
            MovementQuestions.ALL,
            WeightQuestions.ALL,
            FireQuestions.ALL,
            ElectricalQuestions.ALL,
            DocumentQuestions.ALL,
            InstallQuestions.ALL,
            AccuracyQuestions.ALL,
            TakeoffQuestions.ALL,
            DurabilityQuestions.ALL)
        .flatMap(List::stream);
  }

  private static Supplier<Answers> asked(Question question, Layout layout, Limits limits) {
    return () -> {
      Answers answers = new Answers();
      question.ask(layout, limits, answers);
      return answers;
    };
  }
}

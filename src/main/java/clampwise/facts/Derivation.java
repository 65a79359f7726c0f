package clampwise.facts;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.facts.bonding.BondingQuestions;
import clampwise.facts.clamps.ClampQuestions;
import clampwise.facts.layout.BondingNames;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LayoutBuilder;
import clampwise.facts.movement.MovementQuestions;
import clampwise.facts.roof.RoofQuestions;
import clampwise.facts.survey.SurveyQuestions;
import clampwise.facts.weight.WeightQuestions;
import clampwise.job.Job;
import clampwise.source.Problems;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** Turns a job into facts: lays it out in space and asks every question about it. */
public final class Derivation {

  private Derivation() {}

  /** All facts of a job; what cannot be laid out as written is added to the problems. */
  public static Facts of(Job job, Catalogue catalogue, Limits limits, Problems problems) {
    Layout layout = new LayoutBuilder(limits).build(job, catalogue, problems);
    BondingNames.check(layout, problems);
    Answers answers = answers(layout, limits);
    return new Facts(layout, answers.facts(), answers.missing());
  }

  /**
   * Half of the questions are asked on another core; the order of the answers is always the same.
   */
  private static Answers answers(Layout layout, Limits limits) {
    CompletableFuture<Answers> roof =
        CompletableFuture.supplyAsync(
            () -> ask(RoofQuestions.ALL, layout, limits), OtherCores.executor());
    Answers answers = ask(ClampQuestions.ALL, layout, limits);
    Answers others = ask(BondingQuestions.ALL, layout, limits);
    Answers survey = ask(SurveyQuestions.ALL, layout, limits);
    Answers movement = ask(MovementQuestions.ALL, layout, limits);
    Answers weight = ask(WeightQuestions.ALL, layout, limits);
    answers.addAll(result(roof));
    answers.addAll(others);
    answers.addAll(survey);
    answers.addAll(movement);
    answers.addAll(weight);
    return answers;
  }

  private static Answers ask(List<Question> questions, Layout layout, Limits limits) {
    Answers answers = new Answers();
    questions.forEach(question -> question.ask(layout, limits, answers));
    return answers;
  }

  /** A fault on the other core is the same fault here. */
  private static Answers result(CompletableFuture<Answers> future) {
    try {
      return future.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw e;
    }
  }
}

package clampwise.facts;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.Limits;
import clampwise.facts.bonding.BondingQuestions;
import clampwise.facts.clamps.ClampQuestions;
import clampwise.facts.layout.BondingNames;
import clampwise.facts.layout.Layout;
import clampwise.facts.layout.LayoutBuilder;
import clampwise.facts.roof.RoofQuestions;
import clampwise.facts.survey.SurveyQuestions;
import clampwise.job.Job;
import clampwise.source.Problems;
import java.util.List;
import java.util.stream.Stream;

/** Turns a job into facts: lays it out in space and asks every question about it. */
public final class Derivation {

  private Derivation() {}

  /** All facts of a job; what cannot be laid out as written is added to the problems. */
  public static Facts of(Job job, Catalogue catalogue, Limits limits, Problems problems) {
    Layout layout = new LayoutBuilder().build(job, catalogue, problems);
    BondingNames.check(layout, problems);
    Answers answers = new Answers();
    questions().forEach(question -> question.ask(layout, limits, answers));
    return new Facts(layout, answers.facts(), answers.missing());
  }

  private static List<Question> questions() {
    return Stream.of(
            ClampQuestions.ALL, RoofQuestions.ALL, BondingQuestions.ALL, SurveyQuestions.ALL)
        .flatMap(List::stream)
        .toList();
  }
}

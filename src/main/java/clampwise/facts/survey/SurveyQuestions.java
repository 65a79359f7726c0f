package clampwise.facts.survey;

import clampwise.facts.Question;
import java.util.List;

/** All questions about the survey of the roof. */
public final class SurveyQuestions {

  public static final List<Question> ALL =
      List.of(ReferenceLines::ask, SeamDrifts::ask, AssumedFacts::ask, SurveyRecords::ask);

  private SurveyQuestions() {}
}

package clampwise.facts.roof;

import clampwise.facts.Question;
import java.util.List;

/** All questions about the roof and what sits on it. */
public final class RoofQuestions {

  public static final List<Question> ALL = List.of();

  private RoofQuestions() {}
}

package clampwise.facts.clamps;

import clampwise.facts.Question;
import java.util.List;

/** All questions about clamps and module edges. */
public final class ClampQuestions {

  public static final List<Question> ALL = List.of();

  private ClampQuestions() {}
}

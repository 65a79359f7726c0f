package clampwise.facts.accuracy;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.install.InstallQuestions;
import clampwise.facts.layout.Layout;
import clampwise.job.Install;
import java.util.List;
import java.util.Optional;

/** All questions about how exactly modules are set. */
public final class AccuracyQuestions {

  public static final List<Question> ALL = List.of(AccuracyQuestions::ask);

  private AccuracyQuestions() {}

  /** Without a word on the topic, nothing of it is begun. */
  private static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Install> install = layout.job().install();
    if (install.isEmpty()) {
      InstallQuestions.unsaid(
          List.of(
              RowStack.class,
              ColumnStack.class,
              DiagonalPair.class,
              DrawnDiagonal.class,
              SquareCorner.class),
          layout,
          answers);
    } else {
      StackQuestions.ask(layout, install.get(), limits, answers);
      SquareQuestions.ask(layout, install.get(), limits, answers);
    }
  }
}

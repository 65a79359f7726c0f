package clampwise.facts.documents;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Documents;
import java.util.List;
import java.util.Optional;

/** All questions about the documents of a package. */
public final class DocumentQuestions {

  public static final List<Question> ALL = List.of(DocumentQuestions::ask);

  private DocumentQuestions() {}

  /** Without a word on the topic, nothing of it is begun. */
  private static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Documents> documents = layout.job().documents();
    if (documents.isEmpty()) {
      unsaid(layout, answers);
    } else {
      Submittal submittal = new Submittal(layout, documents.get(), answers);
      PackageParts.ask(submittal);
      SheetAgreements.ask(submittal);
      SheetSeals.ask(submittal);
      DrawingContents.ask(submittal);
      DocumentDates.ask(submittal);
    }
  }

  private static void unsaid(Layout layout, Answers answers) {
    String reason =
        layout.job().unreadable().holds("documents")
            ? "what the job says of its documents could not be read"
            : "the job says nothing about its documents (documents)";
    for (Class<? extends Fact> type : types()) {
      answers.missing(type, Subject.of("documents"), reason, layout.job().at("documents"));
    }
  }

  private static List<Class<? extends Fact>> types() {
    return List.of(
        PackagePart.class,
        SheetRevision.class,
        SheetModule.class,
        SheetSeal.class,
        ReviewDone.class,
        DrawingBasics.class,
        PlanContents.class,
        DocumentExpiry.class,
        DocumentDate.class);
  }
}

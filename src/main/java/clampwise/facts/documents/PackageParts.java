package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Documents.Project;
import clampwise.job.Documents.Review;
import clampwise.units.Unit;
import java.util.List;
import java.util.Optional;

/** Asks what a project of its kind needs: documents, and reviews by others. */
record PackageParts(Submittal submittal, Choice<Project> project) {

  private static final Subject PACKAGE = Submittal.DOCUMENTS.part("package");
  private static final Subject REVIEWS = Submittal.DOCUMENTS.part("reviews");

  static void ask(Submittal submittal) {
    Optional<Choice<Project>> project = submittal.documents().project();
    if (project.isPresent()) {
      PackageParts parts = new PackageParts(submittal, project.get());
      parts.askDocuments();
      parts.askReviews();
    } else {
      String reason = submittal.lacks("the kind of project", "project");
      for (Class<? extends Fact> type : List.of(PackagePart.class, ReviewDone.class)) {
        submittal.missing(type, type == PackagePart.class ? PACKAGE : REVIEWS, reason);
      }
    }
  }

  private void askDocuments() {
    if (submittal.documents().sheets().isEmpty()) {
      missing(PACKAGE, PackagePart.class, submittal.lacks("the list of documents", "sheets"));
      return;
    }
    for (Table.Row row : submittal.rows("package")) {
      if (Submittal.isYes(row, project.toString())) {
        judge(row);
      }
    }
  }

  /** A document that could not be read may be the one that seems to be missing. */
  private void judge(Table.Row row) {
    boolean present = !submittal.sheets(row.word("sheet")).isEmpty();
    Subject subject = PACKAGE.part(row.word("words"));
    if (!present && submittal.isLost("sheets")) {
      missing(subject, PackagePart.class, "some of the documents could not be read");
      return;
    }
    submittal
        .answers()
        .add(
            new PackagePart(
                subject,
                project.at(),
                Unit.NUMBER,
                project.toString(),
                row.word("words"),
                present,
                submittal.from("package", row)));
  }

  private void askReviews() {
    Optional<List<Choice<Review>>> reviews = submittal.documents().reviews();
    for (Table.Row row : submittal.rows("reviews")) {
      if (Submittal.isYes(row, project.toString())) {
        if (reviews.isPresent() && !submittal.isLost("reviews")) {
          submittal.answers().add(review(row, reviews.get()));
        } else {
          String what = "which reviews the package has been through";
          missing(REVIEWS, ReviewDone.class, submittal.lacks(what, "reviews"));
        }
      }
    }
  }

  private ReviewDone review(Table.Row row, List<Choice<Review>> reviews) {
    boolean done = false;
    for (Choice<Review> review : reviews) {
      done |= review.toString().equals(row.word("review"));
    }
    return new ReviewDone(
        REVIEWS.part(row.word("review")),
        reviews.isEmpty() ? project.at() : reviews.get(0).at(),
        Unit.NUMBER,
        project.toString(),
        row.word("words"),
        done,
        submittal.from("reviews", row));
  }

  private void missing(Subject subject, Class<? extends Fact> type, String reason) {
    submittal.missing(type, subject, reason);
  }
}

package clampwise.proof;

import clampwise.finding.Finding;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import java.nio.charset.StandardCharsets;
import java.util.SortedSet;
import java.util.TreeSet;

/** Another way to write a job down, or the same roof seen otherwise, that no verdict depends on. */
interface Change {

  /** The job as changed; the one given stays as it is. */
  Draft of(Draft draft);

  /** What a subject of the job is called in the changed one. */
  default String renamed(Draft draft, String subject) {
    return subject;
  }

  /** The text of the changed job. */
  default String text(Draft draft) {
    return of(draft).written().text();
  }

  /** Rules with what they found something about, as named in the changed job. */
  default SortedSet<String> expected(Draft draft, Reviewer reviewer) {
    SortedSet<String> verdicts = new TreeSet<>();
    verdicts(draft.written().text(), reviewer).forEach(each -> verdicts.add(renamed(draft, each)));
    return verdicts;
  }

  default SortedSet<String> found(Draft draft, Reviewer reviewer) {
    SortedSet<String> verdicts = new TreeSet<>();
    verdicts(text(draft), reviewer).forEach(each -> verdicts.add(shortened(each)));
    return verdicts;
  }

  /** What of a subject outlasts the change. */
  default String shortened(String subject) {
    return subject;
  }

  private static SortedSet<String> verdicts(String text, Reviewer reviewer) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Review review = reviewer.review("job", bytes, SourceFiles.none());
    SortedSet<String> verdicts = new TreeSet<>();
    review.problems().forEach(each -> verdicts.add("problem " + each.found()));
    review.findings().forEach(each -> verdicts.add(verdict(each)));
    return verdicts;
  }

  private static String verdict(Finding finding) {
    return finding.severity().word() + " " + finding.rule() + ": " + finding.cause();
  }
}

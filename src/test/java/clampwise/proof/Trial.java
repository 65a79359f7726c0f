package clampwise.proof;

import clampwise.finding.Finding;
import clampwise.finding.Severity;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import clampwise.source.SourceFiles;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * One run: a job with defects in it, and what the review made of them.
 *
 * @param missed defects that were not found where they are, each with what was found instead
 * @param others problems, and errors that no defect causes; what the review itself counts among the
 *     consequences of another finding stands or falls with that one
 */
record Trial(
    JobKind kind, long seed, List<Planted> planted, List<String> missed, List<String> others) {

  static Trial of(CleanJob job, List<Planted> planted, Reviewer reviewer) {
    Written written = job.draft().written();
    byte[] text = written.text().getBytes(StandardCharsets.UTF_8);
    Review review = reviewer.review("job", text, SourceFiles.none());
    List<String> missed = new ArrayList<>();
    planted.forEach(each -> missed.addAll(missed(each, written, review)));
    List<String> others = new ArrayList<>();
    review.problems().forEach(problem -> others.add(problem.at() + " " + problem.found()));
    review.findings().stream()
        .filter(finding -> finding.severity() == Severity.ERROR && finding.leads())
        .filter(finding -> planted.stream().noneMatch(each -> explains(each, finding, written)))
        .forEach(finding -> others.add(text(finding)));
    return new Trial(job.kind(), job.seed(), planted, missed, others);
  }

  private static List<String> missed(Planted planted, Written written, Review review) {
    String rule = planted.defect().rule();
    List<Finding> own = review.findings().stream().filter(f -> f.rule().equals(rule)).toList();
    List<String> missed = new ArrayList<>();
    planted.at().stream()
        .filter(path -> own.stream().noneMatch(finding -> written.isAt(path, line(finding))))
        .forEach(path -> missed.add(planted.defect() + " at " + path + " " + found(own, review)));
    planted.about().stream()
        .filter(name -> own.stream().noneMatch(isAbout(name)))
        .forEach(
            name -> missed.add(planted.defect() + " about " + name + " " + found(own, review)));
    return missed;
  }

  private static List<String> found(List<Finding> own, Review review) {
    List<Finding> instead = own.isEmpty() ? review.findings() : own;
    return instead.stream().map(Trial::text).toList();
  }

  private static boolean explains(Planted planted, Finding finding, Written written) {
    return planted.also().contains(finding.rule())
        || planted.defect().rule().equals(finding.rule())
            && planted.at().stream().anyMatch(path -> written.isAt(path, line(finding)));
  }

  private static int line(Finding finding) {
    return finding.at().start().line();
  }

  private static Predicate<Finding> isAbout(String name) {
    return finding ->
        finding.cause().path().contains(name)
            || finding.places().stream().anyMatch(place -> place.subject().path().contains(name));
  }

  private static String text(Finding finding) {
    return finding.at() + " " + finding.rule() + " (" + finding.cause() + "): " + finding.message();
  }

  boolean isRight() {
    return missed.isEmpty() && others.isEmpty();
  }
}

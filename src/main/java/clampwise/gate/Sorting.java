package clampwise.gate;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.finding.Weights;
import clampwise.review.Review;
import clampwise.rulebook.OwnRules;
import clampwise.source.Nearest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Tells the findings of one review apart by what answers for them. */
final class Sorting {

  private final Review review;
  private final List<Answer> answers;
  private final LocalDate today;
  private final Supplier<Collection<String>> rules;
  private final Map<FindingName, Finding> open = new LinkedHashMap<>();
  private final List<Accepted> accepted = new ArrayList<>();
  private final List<Finding> added = new ArrayList<>();

  /** For these somebody answered who does no more; no debt stands behind that. */
  private final Set<FindingName> contested = new HashSet<>();

  Sorting(
      Review review, List<Answer> answers, LocalDate today, Supplier<Collection<String>> rules) {
    this.review = review;
    this.answers = answers;
    this.today = today;
    this.rules = rules;
    review.findings().forEach(finding -> open.put(finding.name(), finding));
  }

  /** Lets every answer speak, in the order written. */
  void sort() {
    for (Answer answer : answers) {
      Optional<Finding> found = Optional.ofNullable(open.get(answer.name()));
      if (found.isPresent() && !contested.contains(answer.name())) {
        weigh(answer, found.get());
      } else if (found.isEmpty()) {
        idle(answer);
      }
    }
  }

  private void weigh(Answer answer, Finding finding) {
    Optional<Answer.Fault> fault = answer.fault(finding, review.revision(), today);
    if (fault.isEmpty()) {
      open.remove(finding.name());
      accepted.add(answer.accept(finding));
    } else {
      contested.add(finding.name());
      String kind = kind(answer);
      HouseRule rule = fault.get().rule();
      added.add(rule.found(finding, answer.subject(kind), answer.at(), fault.get().words()));
    }
  }

  private void idle(Answer answer) {
    if (OwnRules.isElsewhere(answer.name().rule(), rules.get())) {
      return;
    }
    if (answer instanceof DeviationAnswer && !rules.get().contains(answer.name().rule())) {
      added.add(unknown(answer));
    } else if (Gaps.wouldShow(answer.name(), review) && isFirst(answer)) {
      added.add(answer.idle());
    } else if (answer instanceof DeviationAnswer deviation && !isFirst(answer)) {
      added.add(deviation.idle());
    }
  }

  /** Whether nobody spoke for the same finding before; a debt may stand behind a deviation. */
  private boolean isFirst(Answer answer) {
    return accepted.stream().noneMatch(one -> one.finding().name().equals(answer.name()));
  }

  private Finding unknown(Answer answer) {
    String id = answer.name().rule();
    String nearest =
        Nearest.to(id, rules.get()).map(known -> "write " + known).orElse("take it out");
    Words words = new Words("there is no rule " + id, nearest + "; clampwise explain lists them");
    return HouseRule.DEVIATION_OF_UNKNOWN_RULE.found(
        answer.subject(kind(answer)), answer.at(), words);
  }

  private static String kind(Answer answer) {
    return answer instanceof DeviationAnswer ? DeviationAnswer.KIND : DebtAnswer.KIND;
  }

  /** What nobody answers for, in the order of the review. */
  List<Finding> open(Weights weights) {
    Set<FindingName> answered =
        accepted.stream().map(one -> one.finding().name()).collect(Collectors.toSet());
    List<Finding> all = new ArrayList<>();
    for (Finding finding : open.values()) {
      boolean alone = finding.follows().filter(answered::contains).isPresent();
      all.add(alone ? finding.leading() : finding);
    }
    added.forEach(one -> all.add(one.weighing(weights.of(one.rule(), one.severity()))));
    all.sort(Comparator.comparing(Finding::severity));
    return List.copyOf(all);
  }

  /** What somebody answers for, in the order of the answers. */
  List<Accepted> accepted() {
    return List.copyOf(accepted);
  }
}

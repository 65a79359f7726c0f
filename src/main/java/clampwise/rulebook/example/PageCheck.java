package clampwise.rulebook.example;

import clampwise.finding.Finding;
import clampwise.rulebook.Judgement;
import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RuleCard;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.Rulebook;
import clampwise.source.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Whether a rule page is complete and its examples hold. */
public final class PageCheck {
  private final Rulebook rulebook;
  private final ExampleFacts facts;

  /**
   * What one check of a page came to.
   *
   * @param what what was checked; of an example, its title
   * @param failure what is wrong, if anything is
   */
  public record Outcome(String what, Optional<String> failure) {}

  /** Checks pages by rules, their examples laid over base jobs. */
  public PageCheck(Rulebook rulebook, BaseJobs bases) {
    this.rulebook = rulebook;
    this.facts = new ExampleFacts(bases);
  }

  /** Every check of a page, in the order in which one reads it. */
  public List<Outcome> of(RulePage page) {
    PageText text = PageText.of(page);
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(new Outcome("has the title of its rule", title(page)));
    outcomes.add(new Outcome("has all headings, none of them empty", headings(text)));
    outcomes.add(new Outcome("has every kind of example", kinds(text)));
    for (PageExample example : text.examples()) {
      outcomes.add(new Outcome(example.title(), example(page.id(), example)));
    }
    return outcomes;
  }

  private Optional<String> title(RulePage page) {
    String title =
        rulebook.cards().stream()
            .filter(card -> card.id().equals(page.id()))
            .map(RuleCard::title)
            .findFirst()
            .orElse("");
    String bare = title.startsWith(OwnRules.MARK) ? title.substring(OwnRules.MARK.length()) : title;
    return unless(
        bare.equals(page.title()), "the page is headed " + page.title() + ", the rule " + bare);
  }

  private static Optional<String> headings(PageText text) {
    if (!text.headings().equals(PageText.HEADINGS)) {
      return Optional.of(
          "the headings are "
              + String.join(", ", text.headings())
              + "; they should be "
              + String.join(", ", PageText.HEADINGS));
    }
    List<String> empty = new ArrayList<>(PageText.HEADINGS);
    empty.removeIf(heading -> !text.section(heading).isEmpty());
    return unless(empty.isEmpty(), "nothing stands below " + String.join(", ", empty));
  }

  private static Optional<String> kinds(PageText text) {
    List<String> missing = new ArrayList<>(PageExample.KINDS);
    missing.removeIf(kind -> text.examples().stream().anyMatch(example -> example.isOf(kind)));
    List<String> wrong = new ArrayList<>();
    missing.forEach(kind -> wrong.add("no example begins with " + kind));
    text.examples().forEach(example -> wrong.addAll(marks(example)));
    return unless(wrong.isEmpty(), String.join("; ", wrong));
  }

  private static List<String> marks(PageExample example) {
    String name = "### " + example.title();
    if (PageExample.KINDS.stream().noneMatch(example::isOf)) {
      return List.of(name + " begins with none of " + String.join(" ", PageExample.KINDS));
    }
    boolean marked = !example.marked().isEmpty();
    if (example.isOf("Fires:") && !marked) {
      return List.of(name + " marks no line with # <- finding");
    }
    return example.isOf("Silent:") && marked
        ? List.of(name + " marks a line with # <- finding")
        : List.of();
  }

  private Optional<String> example(String rule, PageExample example) {
    try {
      return compare(rule, example, rulebook.judge(facts.of(example)));
    } catch (UnusableExample e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
  }

  private static Optional<String> compare(String rule, PageExample example, Judgement judgement) {
    List<String> wrong = new ArrayList<>();
    for (Problem problem : judgement.failed()) {
      wrong.add(problem.at() + ": " + problem.found());
    }
    SortedSet<Integer> silent = new TreeSet<>(example.marked());
    for (Finding finding : judgement.findings()) {
      if (finding.rule().equals(rule)) {
        int line = line(finding, example);
        silent.remove(line);
        if (!example.marked().contains(line)) {
          wrong.add("a finding that is not marked, at " + finding.at() + ": " + finding.message());
        }
      }
    }
    silent.forEach(line -> wrong.add("nothing was found at " + example.page() + ":" + line));
    return unless(wrong.isEmpty(), String.join("; ", wrong));
  }

  /** Lines of the example where findings point; 0 for a place outside the example. */
  private static int line(Finding finding, PageExample example) {
    return finding.at().file().equals(example.page()) ? finding.at().start().line() : 0;
  }

  private static Optional<String> unless(boolean good, String otherwise) {
    return good ? Optional.empty() : Optional.of(otherwise);
  }
}

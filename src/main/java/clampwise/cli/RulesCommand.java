package clampwise.cli;

import clampwise.report.Paint;
import clampwise.report.ProblemLine;
import clampwise.report.Role;
import clampwise.report.Sheet;
import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RuleCard;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.Rulebook;
import clampwise.rulebook.example.BaseJobs;
import clampwise.rulebook.example.PageCheck;
import clampwise.rulebook.example.PageCheck.Outcome;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import java.util.List;
import java.util.Optional;

/** {@code clampwise rules}: tests a folder of own rules by their pages, or lists them. */
final class RulesCommand {

  /** What it can do with a folder. */
  static final List<String> ACTIONS = List.of("test", "list");

  private final Console console;
  private final Sheet sheet;
  private int checks;
  private int failed;

  RulesCommand(Console console) {
    this.console = console;
    boolean colours = console.screen().coloursByItself(console.environment());
    this.sheet = new Sheet(console.screen().textWidth(), colours ? new Colours() : Paint.NONE);
  }

  /** Takes what to do and the folder. */
  int run(List<String> words) {
    String action = words.get(0);
    if (!ACTIONS.contains(action)) {
      throw new UsageException(
          "rules takes test or list, not " + action + Hint.of(Nearest.to(action, ACTIONS)));
    }
    if (words.size() != 2) {
      throw new UsageException("clampwise rules " + action + " takes one folder of own rules");
    }
    OwnRulesChoice choice = OwnRulesChoice.named(words.get(1), "rules " + action);
    OwnRules own = choice.read(console.environment());
    own.notes().forEach(console::complain);
    own.problems().forEach(this::wrong);
    if (action.equals("list")) {
      own.rules().cards().forEach(this::list);
    } else {
      test(own, new BaseJobs(Optional.of(choice.folder().resolve("base"))));
    }
    console.print(sheet.toString());
    return own.problems().isEmpty() ? failed == 0 ? ExitCode.CLEAR : ExitCode.FINDINGS : 2;
  }

  private void wrong(Problem problem) {
    console.complain("own rule left out: " + problem.at() + ": " + ProblemLine.of(problem));
  }

  private void list(RuleCard card) {
    sheet.whole(2, Role.PLACE, card.id());
    String title = card.title().substring(OwnRules.MARK.length());
    sheet.prose(6, Role.PLAIN, title + " (" + card.severity().word() + ")");
  }

  private void test(OwnRules own, BaseJobs bases) {
    PageCheck pages = new PageCheck(Rulebook.builtIn().with(own), bases);
    for (RulePage page : own.pages()) {
      sheet.whole(0, Role.HEADING, page.id());
      pages.of(page).forEach(this::report);
      sheet.gap();
    }
    String rules = own.pages().size() + (own.pages().size() == 1 ? " rule, " : " rules, ");
    String wrong = own.problems().isEmpty() ? "" : ", rules left out: see above";
    sheet.prose(0, Role.PLAIN, rules + checks + " checks, " + failed + " failed" + wrong);
  }

  private void report(Outcome outcome) {
    checks++;
    if (outcome.failure().isEmpty()) {
      sheet.prose(2, Role.PLAIN, "holds   " + outcome.what());
      return;
    }
    failed++;
    sheet.prose(2, Role.ERROR, "failed  " + outcome.what());
    sheet.prose(10, Role.PLAIN, outcome.failure().get());
  }
}

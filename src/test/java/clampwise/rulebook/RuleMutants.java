package clampwise.rulebook;

import clampwise.rulebook.build.RuleText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Small mistakes one could make in the left side of a rule. */
final class RuleMutants {
  private static final Map<String, String> SWAPS =
      Map.of(
          "<", "<=", "<=", "<", ">", ">=", ">=", ">", "==", "!=", "!=", "==", "&&", "||", "||",
          "&&");
  private static final Pattern OPERATOR = Pattern.compile("<=|>=|==|!=|<|>|&&|\\|\\|");
  private static final Pattern NEGATION = Pattern.compile("!(?!=)");
  private static final Pattern BARE =
      Pattern.compile("(?<=[(,]|&&|\\|\\|)\\s*\\w+\\s*(?=[),]|&&|\\|\\|)");

  private final RuleText rule;
  private final String id;
  private final int from;
  private final int to;
  private final List<Mutant> found = new ArrayList<>();

  /**
   * A rule with one mistake in it.
   *
   * @param rule id of the right rule
   * @param change what was done to it
   * @param text the wrong rule under a name of its own
   */
  record Mutant(String rule, String change, RuleText text) {
    String name() {
      return text.id();
    }
  }

  private RuleMutants(RuleText rule) {
    this.rule = rule;
    this.id = rule.id();
    this.from = rule.text().indexOf("\nwhen") + "\nwhen".length();
    this.to = rule.text().indexOf("\nthen", from);
  }

  static List<Mutant> of(RuleText rule) {
    RuleMutants mutants = new RuleMutants(rule);
    String left = rule.text().substring(mutants.from, mutants.to);
    mutants.swap(left);
    mutants.negate(left);
    mutants.drop(left);
    return mutants.found;
  }

  private void swap(String left) {
    Matcher operator = OPERATOR.matcher(left);
    while (operator.find()) {
      String other = SWAPS.get(operator.group());
      add(left, operator.start(), operator.end(), other);
    }
  }

  private void negate(String left) {
    Matcher negation = NEGATION.matcher(left);
    while (negation.find()) {
      add(left, negation.start(), negation.end(), "");
    }
    Matcher bare = BARE.matcher(left);
    while (bare.find()) {
      add(left, bare.start(), bare.end(), "!" + bare.group().strip());
    }
  }

  /** Leaves out one of several operands. */
  private void drop(String left) {
    for (Operands.Cut cut : Operands.cuts(left)) {
      add(left, cut.from(), cut.to(), "");
    }
  }

  private void add(String left, int start, int end, String replacement) {
    String change = "'" + left.substring(start, end).strip() + "' to '" + replacement + "'";
    String name = id + "-mutant-" + found.size();
    String text =
        rule.text().substring(0, from)
            + left.substring(0, start)
            + replacement
            + left.substring(end)
            + rule.text().substring(to);
    String renamed = text.replace("rule \"" + id + "\"", "rule \"" + name + "\"");
    RuleText mutant = new RuleText(rule.topic() + "/" + name + ".drl", renamed);
    found.add(new Mutant(id, change, mutant));
  }
}

package clampwise.rulebook.build;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What every rule file has to look like, beyond what the compiler asks. */
final class RuleForm {
  private static final Pattern RIGHT_SIDE =
      Pattern.compile("\\nthen\\s+report\\.found\\(drools, \\$\\w+\\);\\s+end\\s*$");
  private static final Pattern TEXTS = Pattern.compile("\"(\\\\.|[^\"\\\\])*\"");
  private static final Pattern ARITHMETIC = Pattern.compile("[-+*/%]|\\b(Math|eval)\\b");
  private static final Pattern SEVERITY = Pattern.compile("error|warning|note");
  private static final Pattern ATTRIBUTES =
      Pattern.compile("(?m)^\\s*(salience|no-loop|agenda-group|dialect|enabled|duration|timer)\\b");

  private final RuleText rule;
  private final List<String> faults = new ArrayList<>();

  private RuleForm(RuleText rule) {
    this.rule = rule;
  }

  /** What is wrong with a rule's form, one line a fault. */
  static List<String> faults(RuleText rule) {
    RuleForm form = new RuleForm(rule);
    form.check();
    return form.faults;
  }

  private void check() {
    String text = rule.text();
    need(text.contains("rule \"" + rule.id() + "\""), "the rule is not named like its file");
    need(
        text.startsWith("package clampwise.rules." + rule.topic() + "\n"),
        "its package is not clampwise.rules." + rule.topic());
    need(SEVERITY.matcher(rule.note("severity")).matches(), "@severity is no severity");
    need(finds(RIGHT_SIDE), "the right side is not one call of report.found(drools, $f)");
    need(!ARITHMETIC.matcher(leftSide()).find(), "the left side computes");
    need(!finds(ATTRIBUTES), "a rule has no salience or other attributes");
  }

  private String leftSide() {
    String text = rule.text();
    int from = Math.max(0, text.indexOf("\nwhen"));
    int to = Math.max(from, text.indexOf("\nthen", from));
    return TEXTS.matcher(text.substring(from, to)).replaceAll("");
  }

  private boolean finds(Pattern pattern) {
    return pattern.matcher(rule.text()).find();
  }

  private void need(boolean met, String otherwise) {
    if (!met) {
      faults.add(rule.file() + ": " + otherwise);
    }
  }
}

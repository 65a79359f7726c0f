package clampwise.rulebook.own;

import clampwise.rulebook.OwnRules;
import clampwise.source.Nearest;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What every own rule has to look like; said before the compiler says it in its words. */
final class FormCheck {
  private static final Pattern ID = Pattern.compile(OwnRules.PREFIX + "[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern PACKAGE = Pattern.compile("(?m)^\\s*package\\s+([\\w.]+)");
  private static final Pattern IMPORT =
      Pattern.compile("(?m)^\\s*import\\s+(clampwise\\.facts\\.[\\w.]+)");
  private static final Pattern REPORT =
      Pattern.compile("(?m)^\\s*global\\s+clampwise\\.rulebook\\.Report\\s+report\\b");
  private static final Pattern RULE = Pattern.compile("(?m)^\\s*rule\\s+\"([^\"]*)\"");
  private static final Pattern ATTRIBUTES =
      Pattern.compile(
          "(?m)^\\s*(salience|no-loop|agenda-group|dialect|enabled|duration|timer|lock-on-active)\\b");
  private static final Pattern RIGHT_SIDE = Pattern.compile("(?s)\\A(.*)\\bend\\s*;?\\s*\\z");
  private static final Pattern FOUND =
      Pattern.compile(
          "\\s*report\\s*\\.\\s*found\\s*\\(\\s*drools\\s*,\\s*(\\$\\w+)\\s*\\)\\s*;\\s*");

  private final RuleSource source;
  private final FactTypes facts;
  private final List<Problem> problems = new ArrayList<>();

  private FormCheck(RuleSource source, FactTypes facts) {
    this.source = source;
    this.facts = facts;
  }

  /** What is wrong with the form of a rule. */
  static List<Problem> of(RuleSource source, FactTypes facts) {
    FormCheck check = new FormCheck(source, facts);
    if (!check.hasParts()) {
      return check.problems;
    }
    check.name();
    check.packageLine();
    check.imports();
    check.report();
    check.attributes();
    check.rightSide();
    check.problems.addAll(NoteCheck.of(source, facts));
    return check.problems;
  }

  private void name() {
    String id = source.rule().id();
    if (!ID.matcher(id).matches()) {
      String good = id.startsWith(OwnRules.PREFIX) ? "own-gap-too-small" : OwnRules.PREFIX + id;
      add(
          Span.startOf(source.shown()),
          "a rule called " + id,
          "a name of small letters and hyphens that begins with own-, such as " + good + ".drl");
    }
    Matcher rule = RULE.matcher(source.code());
    boolean first = rule.find();
    if (first && !rule.group(1).equals(id)) {
      add(source.span(rule, 1), "rule \"" + rule.group(1) + "\"", "the name of the file, " + id);
    }
    if (first && rule.find()) {
      add(source.span(rule, 1), "a second rule", "one rule a file");
    }
  }

  /** Whether the parts of a rule are there; of one that lacks them nothing else can be said. */
  private boolean hasParts() {
    List<String> missing = new ArrayList<>();
    for (String word : List.of("rule", "when", "then", "end")) {
      if (!Pattern.compile("(?m)^\\s*" + word + "\\b").matcher(source.bare()).find()) {
        missing.add("no line that begins with " + word);
      }
    }
    if (!missing.isEmpty()) {
      String wanted =
          "rule \"" + source.rule().id() + "\", what it says of itself, when, then, end";
      problems.add(source.problem(String.join(", ", missing), wanted));
    }
    return missing.isEmpty();
  }

  private void packageLine() {
    String wanted = "own." + source.rule().topic();
    Matcher line = PACKAGE.matcher(source.bare());
    if (!line.find()) {
      add(Span.startOf(source.shown()), "no package", "package " + wanted + " in the first line");
    } else if (!line.group(1).equals(wanted)) {
      add(
          source.span(line, 1),
          "package " + line.group(1),
          "package " + wanted + ", after the folder");
    }
  }

  private void imports() {
    Matcher line = IMPORT.matcher(source.bare());
    while (line.find()) {
      String name = line.group(1);
      if (!name.endsWith(".") && !facts.has(name)) {
        String simple = name.substring(name.lastIndexOf('.') + 1);
        Optional<String> near =
            facts.find(simple).or(() -> Nearest.to(simple, facts.names()).flatMap(facts::find));
        problems.add(
            source.problem(
                source.span(line, 1), "an import of " + name, "a fact of docs/facts.md", near));
      }
    }
  }

  private void report() {
    if (!REPORT.matcher(source.bare()).find()) {
      add(
          Span.startOf(source.shown()),
          "no line that names the report",
          "global clampwise.rulebook.Report report above the rule");
    }
  }

  private void attributes() {
    Matcher attribute = ATTRIBUTES.matcher(source.bare());
    if (attribute.find()) {
      add(source.span(attribute, 1), attribute.group(1), "a rule without such attributes");
    }
  }

  private void rightSide() {
    int then = source.then();
    Matcher right = RIGHT_SIDE.matcher(source.bare().substring(then));
    if (!right.find()) {
      return; // the compiler says where the text breaks off
    }
    Matcher found = FOUND.matcher(right.group(1));
    String written = right.group(1).strip();
    int at = then + source.bare().substring(then).indexOf(written);
    Span span = source.span(at, at + written.length());
    if (!found.matches()) {
      String what = written.isEmpty() ? "nothing after then" : "after then: " + firstLine(written);
      add(span, what, "one call, report.found(drools, $f);");
    } else if (!source.conditions().contains(found.group(1))) {
      add(span, found.group(1) + ", which no condition binds", "the fact that was found, $f");
    }
  }

  private static String firstLine(String text) {
    return text.lines().findFirst().orElse("");
  }

  private void add(Span at, String found, String expected) {
    problems.add(source.problem(at, found, expected));
  }
}

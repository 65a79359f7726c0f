package clampwise.rulebook.build;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Compiles rules while the program runs. It may stand in a class loader of its own beside that of
 * the program, so it takes and gives only types of the JDK: rule texts by file; class files by
 * path, the names of the models under {@link #MODELS}, and what is wrong with a rule under its file
 * after {@link #ERRORS}.
 */
public final class OwnCompiler implements UnaryOperator<Map<String, byte[]>> {
  public static final String MODELS = "models";
  public static final String ERRORS = "errors/";

  @Override
  public Map<String, byte[]> apply(Map<String, byte[]> files) {
    List<RuleText> rules = new ArrayList<>();
    files.forEach((file, text) -> rules.add(new RuleText(file, new String(text, UTF_8))));
    Map<String, byte[]> made = new TreeMap<>();
    try {
      add(rules, made);
    } catch (RuleErrors together) {
      rules.removeIf(rule -> isWrong(rule, made));
      addAll(rules, made);
    }
    return made;
  }

  private static void add(List<RuleText> rules, Map<String, byte[]> made) throws RuleErrors {
    RuleCompiler.Compiled compiled = new RuleCompiler().compile(rules);
    made.putAll(compiled.classes());
    made.put(MODELS, String.join("\n", compiled.models()).getBytes(UTF_8));
  }

  private static boolean isWrong(RuleText rule, Map<String, byte[]> made) {
    try {
      new RuleCompiler().compile(List.of(rule));
      return false;
    } catch (RuleErrors alone) {
      made.put(ERRORS + rule.file(), alone.about(rule).getBytes(UTF_8));
      return true;
    }
  }

  /** Rules that are right alone and wrong together are all left out. */
  private static void addAll(List<RuleText> rules, Map<String, byte[]> made) {
    try {
      add(rules, made);
    } catch (RuleErrors together) {
      String why = "does not compile together with the others: " + together.getMessage();
      rules.forEach(rule -> made.put(ERRORS + rule.file(), why.getBytes(UTF_8)));
      made.put(MODELS, new byte[0]);
    }
  }
}

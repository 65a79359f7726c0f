package clampwise.rulebook.build;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;

/** Compiles rule texts into classes. */
public final class RuleCompiler {
  private static final String GENERATED_SOURCE = "Java source of ";
  private static final String MODEL_LIST = "drools-model";

  /**
   * What a compilation gives.
   *
   * @param classes class files by path
   * @param models names of the classes that hold the rules
   */
  public record Compiled(Map<String, byte[]> classes, List<String> models) {}

  /** Compiles all rules together, or says which of them are wrong and why. */
  public Compiled compile(List<RuleText> rules) throws RuleErrors {
    if (rules.isEmpty()) {
      return new Compiled(Map.of(), List.of());
    }
    KieBuilder builder = build(rules);
    if (!errors(builder).isEmpty()) {
      throw new RuleErrors(explain(rules, errors(builder)));
    }
    return collect((InternalKieModule) builder.getKieModule());
  }

  private static KieBuilder build(List<RuleText> rules) {
    KieServices services = KieServices.get();
    KieFileSystem files = services.newKieFileSystem();
    rules.forEach(
        rule -> files.write("src/main/resources/clampwise/rules/" + rule.file(), rule.text()));
    return services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
  }

  private static List<String> errors(KieBuilder builder) {
    return builder.getResults().getMessages(Message.Level.ERROR).stream()
        .map(message -> message.getText().strip())
        .filter(text -> !text.startsWith(GENERATED_SOURCE))
        .toList();
  }

  /** The compiler's own positions are often missing, so each rule is tried alone. */
  private static List<String> explain(List<RuleText> rules, List<String> together) {
    List<String> alone = rules.stream().flatMap(RuleCompiler::errorsOf).toList();
    return alone.isEmpty() ? together : alone;
  }

  private static Stream<String> errorsOf(RuleText rule) {
    return errors(build(List.of(rule))).stream().map(text -> rule.file() + ": " + text).distinct();
  }

  private static Compiled collect(InternalKieModule module) {
    Map<String, byte[]> classes = new TreeMap<>();
    List<String> models = List.of();
    for (String file : module.getFileNames()) {
      if (file.endsWith(".class")) {
        classes.put(file, module.getBytes(file));
      } else if (file.endsWith(MODEL_LIST)) {
        models = modelsIn(new String(module.getBytes(file), StandardCharsets.UTF_8));
      }
    }
    return new Compiled(classes, models);
  }

  /** The list opens with a line that gives the version of its format. */
  private static List<String> modelsIn(String list) {
    return list.lines().filter(line -> !line.contains(":")).sorted().toList();
  }
}

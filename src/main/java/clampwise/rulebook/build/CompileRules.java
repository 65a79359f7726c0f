package clampwise.rulebook.build;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;

import clampwise.rulebook.RuleIndex;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Build step: compiles the rules and packs their pages beside the classes. Does nothing if neither
 * rules nor facts changed.
 */
public final class CompileRules {
  private static final String WRITTEN = RuleIndex.FOLDER + "written";

  private final RuleFolder rules;
  private final Path classes;

  private CompileRules(Path rules, Path classes) {
    this.rules = new RuleFolder(rules);
    this.classes = classes;
  }

  /** Takes the folder of the rules and the folder of the classes. */
  public static void main(String[] folders) throws IOException, RuleErrors {
    new CompileRules(Path.of(folders[0]), Path.of(folders[1])).run();
  }

  private void run() throws IOException, RuleErrors {
    String stamp = Stamp.of(rules, classes);
    if (!stamp.equals(read(RuleIndex.STAMP))) {
      List<RuleText> texts = rules.rules();
      checkForm(texts);
      RuleCompiler.Compiled compiled = new RuleCompiler().compile(texts);
      removeOld();
      write(compiled);
      packPages(texts);
      packBases();
      write(RuleIndex.FACTS, FactClasses.in(classes));
      write(RuleIndex.STAMP, List.of(stamp));
    }
  }

  private void checkForm(List<RuleText> texts) throws RuleErrors {
    List<String> faults = new ArrayList<>();
    for (RuleText rule : texts) {
      faults.addAll(RuleForm.faults(rule));
      if (!Files.exists(rules.page(rule))) {
        faults.add(rule.file() + ": there is no page " + rule.id() + ".md beside it");
      }
    }
    if (!faults.isEmpty()) {
      throw new RuleErrors(faults);
    }
  }

  private void write(RuleCompiler.Compiled compiled) throws IOException {
    for (Map.Entry<String, byte[]> file : compiled.classes().entrySet()) {
      Path target = classes.resolve(file.getKey());
      Files.createDirectories(target.getParent());
      Files.write(target, file.getValue());
    }
    write(WRITTEN, List.copyOf(compiled.classes().keySet()));
    write(RuleIndex.MODELS, compiled.models());
  }

  private void packPages(List<RuleText> texts) throws IOException {
    List<String> index = new ArrayList<>();
    for (RuleText rule : texts) {
      Files.copy(rules.page(rule), classes.resolve(page(rule.id())), REPLACE_EXISTING);
      index.add(rule.topic() + " " + rule.id() + " " + rule.note("severity"));
    }
    write(RuleIndex.PAGES, index);
  }

  private void packBases() throws IOException {
    List<String> names = new ArrayList<>();
    Files.createDirectories(classes.resolve(RuleIndex.BASE));
    for (Path base : rules.bases()) {
      String file = base.getFileName().toString();
      Files.copy(base, classes.resolve(RuleIndex.BASE + file), REPLACE_EXISTING);
      names.add(file.substring(0, file.lastIndexOf('.')));
    }
    write(RuleIndex.BASES, names);
  }

  private static String page(String id) {
    return RuleIndex.FOLDER + id + ".md";
  }

  private void removeOld() throws IOException {
    for (String file : read(WRITTEN).lines().toList()) {
      Files.deleteIfExists(classes.resolve(file));
    }
    for (String entry : read(RuleIndex.PAGES).lines().toList()) {
      Files.deleteIfExists(classes.resolve(page(entry.split(" ", -1)[1])));
    }
  }

  private void write(String name, List<String> lines) throws IOException {
    Path file = classes.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, String.join("\n", lines));
  }

  private String read(String name) throws IOException {
    Path file = classes.resolve(name);
    return Files.exists(file) ? Files.readString(file) : "";
  }
}

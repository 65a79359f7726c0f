package clampwise.rulebook.build;

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
  private static final String STAMP = RuleIndex.FOLDER + "stamp";
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
    if (!stamp.equals(read(STAMP))) {
      List<RuleText> texts = rules.rules();
      RuleCompiler.Compiled compiled = new RuleCompiler().compile(texts);
      removeOld();
      write(compiled);
      packPages();
      write(STAMP, List.of(stamp));
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

  private void packPages() throws IOException {
    List<String> index = new ArrayList<>();
    for (Path page : rules.pages()) {
      String name = String.valueOf(page.getFileName());
      Files.copy(page, classes.resolve(RuleIndex.FOLDER + name));
      index.add(page.getParent().getFileName() + "/" + name);
    }
    write(RuleIndex.PAGES, index);
  }

  private void removeOld() throws IOException {
    for (String file : read(WRITTEN).lines().toList()) {
      Files.deleteIfExists(classes.resolve(file));
    }
    for (String page : read(RuleIndex.PAGES).lines().toList()) {
      Files.deleteIfExists(
          classes.resolve(RuleIndex.FOLDER + page.substring(page.indexOf('/') + 1)));
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

package clampwise.rulebook;

import clampwise.rulebook.build.RuleCompiler;
import clampwise.rulebook.build.RuleErrors;
import clampwise.rulebook.build.RuleText;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;

/** Compiles rule texts and loads them at once, without files. */
public final class InMemoryRules {
  private InMemoryRules() {}

  /** A rulebook of just these rules. */
  public static Rulebook rulebook(List<RuleText> rules) throws RuleErrors {
    RuleCompiler.Compiled compiled = new RuleCompiler().compile(rules);
    ClassLoader loader = new Bytes(compiled.classes());
    List<Model> models = new ArrayList<>();
    for (String name : compiled.models()) {
      models.add(model(loader, name));
    }
    return Rulebook.of(models);
  }

  private static Model model(ClassLoader loader, String name) {
    try {
      return (Model) loader.loadClass(name).getDeclaredConstructor().newInstance();
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  private static final class Bytes extends ClassLoader {
    private final Map<String, byte[]> classes = new HashMap<>();

    Bytes(Map<String, byte[]> files) {
      super(InMemoryRules.class.getClassLoader());
      files.forEach(
          (file, bytes) -> classes.put(file.replace(".class", "").replace('/', '.'), bytes));
    }

    /** The rules' own classes are never taken from the class path. */
    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = classes.get(name);
      if (bytes == null) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
    }
  }
}

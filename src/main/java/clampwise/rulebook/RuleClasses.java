package clampwise.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drools.model.Model;

/** Rules that were compiled to class files in memory, never to be found on the class path. */
public final class RuleClasses extends ClassLoader {
  private static final String ENDING = ".class";

  private final Map<String, byte[]> classes = new HashMap<>();

  /** Takes class files by path; what is no class file is left out. */
  public RuleClasses(Map<String, byte[]> files) {
    super(RuleClasses.class.getClassLoader());
    files.forEach(
        (file, bytes) -> {
          if (file.endsWith(ENDING)) {
            String name = file.substring(0, file.length() - ENDING.length());
            classes.put(name.replace('/', '.'), bytes);
          }
        });
  }

  /** The models of some names. */
  public List<Model> models(List<String> names) {
    List<Model> models = new ArrayList<>();
    for (String name : names) {
      try {
        models.add((Model) loadClass(name).getDeclaredConstructor().newInstance());
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("the compiled rules are incomplete: " + name, e);
      }
    }
    return models;
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    byte[] bytes = classes.get(name);
    if (bytes == null) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
    }
  }
}

package clampwise.rulebook.build;

import clampwise.facts.Fact;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Lists the fact types, so that they can be named without looking through all classes. */
final class FactClasses {
  private static final String CLASS = ".class";

  private FactClasses() {}

  /** Names of all fact types below a folder of classes, in order. */
  static List<String> in(Path classes) throws IOException {
    try (Stream<Path> files = Files.walk(classes.resolve("clampwise/facts"))) {
      return files
          .map(file -> classes.relativize(file).toString().replace('\\', '/'))
          .filter(name -> name.endsWith(CLASS) && !name.endsWith("package-info.class"))
          .map(name -> name.substring(0, name.length() - CLASS.length()).replace('/', '.'))
          .filter(FactClasses::isFact)
          .sorted()
          .toList();
    }
  }

  private static boolean isFact(String name) {
    try {
      Class<?> type = Class.forName(name, false, FactClasses.class.getClassLoader());
      return Fact.class.isAssignableFrom(type) && type.isRecord();
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }
}

package clampwise.rulebook.own;

import clampwise.rulebook.build.OwnCompiler;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The way to the rule compiler. The finished program has its libraries in a folder beside it, which
 * no plain review looks into; there the compiler runs in a class loader of its own.
 */
final class CompilerDoor {
  private static final String FOLDER = "compiler";
  private static final String JAR = ".jar";

  private CompilerDoor() {}

  /** Names and so versions of what compiles. */
  static List<String> parts() {
    return program().map(CompilerDoor::jars).orElse(List.of()).stream()
        .map(jar -> jar.getFileName().toString())
        .toList();
  }

  /** Compiles rule texts by their files; see {@link OwnCompiler}. */
  static Map<String, byte[]> compile(Map<String, byte[]> rules) {
    Optional<Path> program = program();
    return program.isPresent() ? beside(program.get(), rules) : new OwnCompiler().apply(rules);
  }

  /** The jar of the finished program; none while it runs from its classes. */
  private static Optional<Path> program() {
    @Nullable CodeSource source = CompilerDoor.class.getProtectionDomain().getCodeSource();
    return Optional.ofNullable(source)
        .map(known -> Path.of(uri(known.getLocation())))
        .filter(file -> file.toString().endsWith(JAR));
  }

  private static URI uri(URL location) {
    try {
      return location.toURI();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Path> jars(Path program) {
    Path folder = program.resolveSibling(FOLDER);
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(JAR)).sorted().toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Map<String, byte[]> beside(Path program, Map<String, byte[]> rules) {
    List<Path> jars = new ArrayList<>(jars(program));
    if (jars.isEmpty()) {
      throw new IllegalStateException(
          "the rule compiler is missing: no folder " + program.resolveSibling(FOLDER));
    }
    jars.add(program);
    jars.add(program.resolveSibling("clampwise-libraries" + JAR));
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    try (URLClassLoader loader = loader(jars)) {
      thread.setContextClassLoader(loader);
      return compiler(loader).apply(rules);
    } catch (IOException | ReflectiveOperationException e) {
      throw new IllegalStateException("the rule compiler cannot be loaded", e);
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  private static URLClassLoader loader(List<Path> jars) throws IOException {
    URL[] urls = new URL[jars.size()];
    for (int i = 0; i < urls.length; i++) {
      urls[i] = jars.get(i).toUri().toURL();
    }
    return new URLClassLoader(urls, ClassLoader.getPlatformClassLoader());
  }

  @SuppressWarnings("unchecked")
  private static UnaryOperator<Map<String, byte[]>> compiler(ClassLoader loader)
      throws ReflectiveOperationException {
    return (UnaryOperator<Map<String, byte[]>>)
        loader.loadClass(OwnCompiler.class.getName()).getDeclaredConstructor().newInstance();
  }
}

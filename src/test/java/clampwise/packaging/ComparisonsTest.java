package clampwise.packaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** Compiled rules compare without the engine's class that sets up a date format. */
class ComparisonsTest {
  private static final Path CLASSES = Path.of("target/classes");

  @Test
  void noCompiledRuleWakesTheDateFormatOfTheEngine() throws IOException {
    Map<String, byte[]> all = rules();
    all.put(Comparisons.ENGINE, engine());
    all.putAll(Comparisons.of(all));

    List<String> used = new ArrayList<>();
    all.forEach((name, bytes) -> used.addAll(usesOfEngine(name, bytes)));

    assertThat(all).hasSizeGreaterThan(50);
    assertThat(used).isEmpty();
  }

  @Test
  void rulesThatCompareNothingStayAsTheyAre() throws IOException {
    byte[] bytes = engine();

    assertThat(Comparisons.of(Map.of("clampwise/rules/Other", bytes))).isEmpty();
  }

  private static List<String> usesOfEngine(String name, byte[] bytes) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes).accept(node, 0);
    return name.equals(Comparisons.ENGINE)
        ? List.of()
        : node.methods.stream()
            .flatMap(method -> Stream.of(method.instructions.toArray()))
            .filter(ComparisonsTest::isEngine)
            .map(step -> name)
            .toList();
  }

  private static boolean isEngine(AbstractInsnNode step) {
    return step instanceof MethodInsnNode call && call.owner.equals(Comparisons.ENGINE)
        || step instanceof FieldInsnNode field && field.owner.equals(Comparisons.ENGINE);
  }

  private static Map<String, byte[]> rules() throws IOException {
    Map<String, byte[]> rules = new TreeMap<>();
    try (Stream<Path> files = Files.walk(CLASSES.resolve("clampwise/rules"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".class")).toList()) {
        String name = CLASSES.relativize(file).toString().replace('\\', '/');
        rules.put(name.replace(".class", ""), Files.readAllBytes(file));
      }
    }
    return rules;
  }

  private static byte[] engine() throws IOException {
    try (InputStream in =
        ComparisonsTest.class.getResourceAsStream("/" + Comparisons.ENGINE + ".class")) {
      return in.readAllBytes();
    }
  }
}

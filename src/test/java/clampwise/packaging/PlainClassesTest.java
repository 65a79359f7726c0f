package clampwise.packaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;

class PlainClassesTest {
  private static final String SOURCE = "src/test/java/clampwise/packaging/Sample.java";

  @TempDir Path folder;

  @Test
  void rewrittenClassesDoWhatTheOriginalsDo() throws Exception {
    Class<?> rewritten = new BytesLoader(rewritten()).loadClass(Sample.class.getName());
    Supplier<?> sample = (Supplier<?>) rewritten.getDeclaredConstructor().newInstance();

    assertThat(sample.get()).isEqualTo(new Sample().get());
  }

  @Test
  void nothingIsLeftToLinkAtRunTime() throws IOException {
    Map<String, byte[]> all = rewritten();

    assertThat(all).hasSizeGreaterThan(samples().size() + 5);
    assertThat(all.values()).allSatisfy(bytes -> assertThat(linked(bytes)).isZero());
  }

  private static long linked(byte[] bytes) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes).accept(node, 0);
    return node.methods.stream()
        .flatMap(method -> Stream.of(method.instructions.toArray()))
        .filter(InvokeDynamicInsnNode.class::isInstance)
        .map(InvokeDynamicInsnNode.class::cast)
        .filter(step -> !((Object) step.bsmArgs[1]).toString().contains("[")) // int[]::new
        .count();
  }

  private Map<String, byte[]> rewritten() throws IOException {
    Map<String, byte[]> all = new TreeMap<>(samples());
    all.putAll(PlainClasses.of(samples()));
    return all;
  }

  /** Compiled as the libraries are, whose texts are joined by a call that is linked at run time. */
  private Map<String, byte[]> samples() throws IOException {
    int result =
        ToolProvider.getSystemJavaCompiler()
            .run(null, null, null, "-d", folder.toString(), "--release", "17", SOURCE);
    assertThat(result).isZero();
    Map<String, byte[]> samples = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        samples.put(name.replace(".class", ""), Files.readAllBytes(file));
      }
    }
    return samples;
  }
}

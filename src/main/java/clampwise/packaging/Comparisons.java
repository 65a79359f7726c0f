package clampwise.packaging;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Gives compiled rules the engine's comparisons in a class of their own: that of the engine sets up
 * a date format before it compares the first two numbers, which takes as long as all rules.
 */
final class Comparisons {

  static final String ENGINE = "org/drools/modelcompiler/util/EvaluationUtil";
  private static final String COPY = ENGINE + "$$Plain";
  private static final String RULES = "clampwise/rules/";

  private final Map<String, byte[]> changed = new TreeMap<>();
  private final Set<String> copied = new HashSet<>();

  private Comparisons() {}

  /** The classes that changed or are new, by internal name. */
  static Map<String, byte[]> of(Map<String, byte[]> classes) {
    Comparisons comparisons = new Comparisons();
    byte[] engine = classes.get(ENGINE);
    if (engine != null) {
      comparisons.copy(read(engine));
      classes.forEach(comparisons::redirect);
    }
    return comparisons.changed;
  }

  /** Copies the methods that use nothing else of their class. */
  private void copy(ClassNode engine) {
    engine.methods.removeIf(method -> !standsAlone(method));
    engine.methods.forEach(method -> copied.add(key(method.name, method.desc)));
    engine.fields.clear();
    engine.innerClasses.clear();
    engine.nestMembers = null;
    engine.sourceFile = null;
    engine.name = COPY;
    changed.put(COPY, write(engine));
  }

  private static boolean standsAlone(MethodNode method) {
    return (method.access & Opcodes.ACC_STATIC) != 0
        && (method.access & Opcodes.ACC_PUBLIC) != 0
        && !method.name.startsWith("<")
        && steps(method).noneMatch(Comparisons::usesItsClass);
  }

  private static boolean usesItsClass(AbstractInsnNode step) {
    return step instanceof InvokeDynamicInsnNode
        || step instanceof FieldInsnNode field && field.owner.equals(ENGINE)
        || step instanceof MethodInsnNode call && call.owner.equals(ENGINE);
  }

  private void redirect(String name, byte[] bytes) {
    if (!name.startsWith(RULES)) {
      return;
    }
    ClassNode rule = read(bytes);
    List<MethodInsnNode> calls =
        rule.methods.stream().flatMap(Comparisons::steps).flatMap(this::comparison).toList();
    calls.forEach(call -> call.owner = COPY);
    if (!calls.isEmpty()) {
      changed.put(name, write(rule));
    }
  }

  private Stream<MethodInsnNode> comparison(AbstractInsnNode step) {
    return step instanceof MethodInsnNode call
            && call.owner.equals(ENGINE)
            && copied.contains(key(call.name, call.desc))
        ? Stream.of(call)
        : Stream.empty();
  }

  private static Stream<AbstractInsnNode> steps(MethodNode method) {
    return Stream.of(method.instructions.toArray());
  }

  private static String key(String name, String descriptor) {
    return name + descriptor;
  }

  private static ClassNode read(byte[] bytes) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes).accept(node, 0);
    return node;
  }

  private static byte[] write(ClassNode node) {
    ClassWriter writer = new ClassWriter(0);
    node.accept(writer);
    return writer.toByteArray();
  }
}

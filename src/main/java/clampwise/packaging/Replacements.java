package clampwise.packaging;

import clampwise.plain.Gatherings;
import clampwise.plain.InsteadOf;
import clampwise.plain.Numbers;
import clampwise.plain.Order;
import clampwise.plain.Sources;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodInsnNode;

/** Puts the streams of {@code clampwise.plain} in place of those of the Java library. */
final class Replacements {

  private static final String OWN = "clampwise/";
  private static final String PLAIN = "clampwise/plain/";
  private static final String STREAM = "stream()Ljava/util/stream/Stream;";

  private final Map<String, Method> replacements = new HashMap<>();

  private Replacements() {
    Stream.of(Gatherings.class, Numbers.class, Order.class, Sources.class)
        .flatMap(type -> Arrays.stream(type.getMethods()))
        .filter(method -> method.isAnnotationPresent(InsteadOf.class))
        .forEach(method -> replacements.put(replaced(method), method));
  }

  /** The classes that changed, by internal name. */
  static Map<String, byte[]> of(Map<String, byte[]> classes) {
    Replacements all = new Replacements();
    Map<String, byte[]> changed = new TreeMap<>();
    classes.forEach(
        (name, bytes) -> {
          if (name.startsWith(OWN) && !name.startsWith(PLAIN)) {
            all.replaceIn(name, bytes, changed);
          }
        });
    return changed;
  }

  private void replaceIn(String name, byte[] bytes, Map<String, byte[]> changed) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes).accept(node, 0);
    List<MethodInsnNode> calls =
        node.methods.stream()
            .flatMap(method -> Stream.of(method.instructions.toArray()))
            .flatMap(this::replaceable)
            .toList();
    calls.forEach(this::replace);
    if (!calls.isEmpty()) {
      ClassWriter writer = new ClassWriter(0);
      node.accept(writer);
      changed.put(name, writer.toByteArray());
    }
  }

  private Stream<MethodInsnNode> replaceable(AbstractInsnNode step) {
    return step instanceof MethodInsnNode call && replacements.containsKey(key(call))
        ? Stream.of(call)
        : Stream.empty();
  }

  private void replace(MethodInsnNode call) {
    Method method = Objects.requireNonNull(replacements.get(key(call)));
    call.owner = Type.getInternalName(method.getDeclaringClass());
    call.desc = Type.getMethodDescriptor(method);
    call.itf = false;
    call.setOpcode(Opcodes.INVOKESTATIC);
  }

  /** Collections are asked for their stream under the name of any of their types. */
  private static String key(MethodInsnNode call) {
    String called = call.name + call.desc;
    boolean collection = called.equals(STREAM) && isCollection(call.owner);
    return (collection ? "java/util/Collection" : call.owner) + "." + called;
  }

  private static boolean isCollection(String type) {
    try {
      return type.startsWith("java/util/")
          && Collection.class.isAssignableFrom(Class.forName(type.replace('/', '.')));
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String replaced(Method method) {
    InsteadOf replaced = method.getAnnotation(InsteadOf.class);
    Type[] types = Type.getArgumentTypes(method);
    Type[] asked = replaced.isStatic() ? types : Arrays.copyOfRange(types, 1, types.length);
    String descriptor = Type.getMethodDescriptor(Type.getReturnType(method), asked);
    return Type.getInternalName(replaced.value()) + "." + method.getName() + descriptor;
  }
}

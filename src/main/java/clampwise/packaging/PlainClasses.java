package clampwise.packaging;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.ClassNode;

/** Turns the lambdas of classes into classes and what records derive into ordinary methods. */
final class PlainClasses {

  /** Lambdas exist since Java 8. */
  private static final int OLDEST = Opcodes.V1_8;

  /** Nestmates, which let a generated class call a private method, exist since Java 11. */
  private static final int NESTS = Opcodes.V11;

  private final Map<String, byte[]> classes;
  private final Access access;
  private final Map<String, byte[]> changed = new TreeMap<>();
  private final Map<String, List<String>> newMembers = new LinkedHashMap<>();

  private PlainClasses(Map<String, byte[]> classes) {
    this.classes = classes;
    this.access = new Access(classes);
  }

  /** The classes that changed or are new, by internal name. */
  static Map<String, byte[]> of(Map<String, byte[]> classes) {
    PlainClasses plain = new PlainClasses(classes);
    classes.keySet().forEach(plain::rewrite);
    plain.newMembers.forEach(plain::join);
    return plain.changed;
  }

  private void rewrite(String name) {
    ClassNode host = new ClassNode();
    new ClassReader(bytes(name)).accept(host, 0);
    if ((host.version & 0xFFFF) < OLDEST || (host.access & Opcodes.ACC_MODULE) != 0) {
      return;
    }
    LambdaClasses lambdas = new LambdaClasses(host, access);
    boolean linked = lambdas.replace();
    boolean derived = RecordMethods.replace(host);
    boolean joined = JoinedText.replace(host);
    host.version = Math.max(host.version, NESTS);
    if (linked || derived || joined) {
      changed.put(name, written(host));
    }
    Map<String, byte[]> made = lambdas.made();
    changed.putAll(made);
    if (!made.isEmpty()) {
      newMembers
          .computeIfAbsent(Access.nestOf(host), nest -> new ArrayList<>())
          .addAll(made.keySet());
    }
  }

  /** Lets new classes into a nest. */
  private void join(String nestHost, List<String> members) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes(nestHost)).accept(node, 0);
    node.version = Math.max(node.version, NESTS);
    members.forEach(node::visitNestMember);
    ClassWriter writer = new ClassWriter(0);
    node.accept(writer);
    changed.put(nestHost, writer.toByteArray());
  }

  private byte[] bytes(String name) {
    byte[] bytes = changed.containsKey(name) ? changed.get(name) : classes.get(name);
    if (bytes == null) {
      throw new IllegalStateException("a class without its host: " + name);
    }
    return bytes;
  }

  private static byte[] written(ClassNode node) {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
    node.accept(writer);
    return writer.toByteArray();
  }
}

package clampwise.packaging;

import clampwise.MadeByBuild;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodNode;

/** Calls the methods marked {@link MadeByBuild} and puts what they return in their place. */
final class MadeMethods {

  private static final String MARK = Type.getDescriptor(MadeByBuild.class);

  private final ClassNode host = new ClassNode();
  private final Map<String, byte[]> changed = new TreeMap<>();

  private MadeMethods(byte[] bytes) {
    new ClassReader(bytes).accept(host, 0);
  }

  /**
   * The classes that changed or are new, by internal name.
   *
   * @param bytes a class that this program has loaded too
   */
  static Map<String, byte[]> replace(byte[] bytes) {
    MadeMethods made = new MadeMethods(bytes);
    made.replace();
    return made.changed;
  }

  /** Names of the marked methods of a class. */
  static List<String> marked(byte[] bytes) {
    return new MadeMethods(bytes).marked().map(method -> method.name).toList();
  }

  private Stream<MethodNode> marked() {
    return host.methods.stream()
        .filter(method -> method.invisibleAnnotations != null)
        .filter(
            method ->
                method.invisibleAnnotations.stream().anyMatch(mark -> mark.desc.equals(MARK)));
  }

  private void replace() {
    marked().forEach(this::replace);
    if (!changed.isEmpty()) {
      ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
      host.accept(writer);
      changed.put(host.name, writer.toByteArray());
    }
  }

  private void replace(MethodNode method) {
    Object value = call(method);
    String name = host.name + "$$Made" + changed.size();
    changed.put(name, MadeClass.of(name, value));
    method.instructions.clear();
    method.tryCatchBlocks.clear();
    method.localVariables = null;
    Method self = new Method(method.name, method.desc);
    GeneratorAdapter code = new GeneratorAdapter(method.access, self, method);
    code.invokeStatic(Type.getObjectType(name), MadeClass.maker(MadeClass.MAKE, value));
    code.returnValue();
    code.visitMaxs(0, 0);
  }

  private Object call(MethodNode method) {
    if ((method.access & Opcodes.ACC_STATIC) == 0 || !method.desc.startsWith("()")) {
      throw new IllegalStateException(method.name + " has parameters or is not static");
    }
    try {
      var called = Class.forName(host.name.replace('/', '.')).getDeclaredMethod(method.name);
      called.setAccessible(true);
      return called.invoke(null);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot call " + host.name + "." + method.name, e);
    }
  }
}

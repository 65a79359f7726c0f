package clampwise.packaging;

import java.util.HashMap;
import java.util.Map;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldInsnNode;
import org.objectweb.asm.tree.InsnList;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Lets the YAML scanner compile its pattern where it needs it, in the escapes of a text: few jobs
 * have one, and the classes of a first pattern take a start longer than scanning the job.
 */
final class LatePatterns {

  static final String SCANNER = "org/snakeyaml/engine/v2/scanner/ScannerImpl";
  private static final String PATTERN = "java/util/regex/Pattern";

  private final Map<String, Object> texts = new HashMap<>();

  private LatePatterns() {}

  /** The class that changed, by internal name; nothing without it. */
  static Map<String, byte[]> of(Map<String, byte[]> classes) {
    byte[] scanner = classes.get(SCANNER);
    return scanner == null ? Map.of() : Map.of(SCANNER, new LatePatterns().changed(scanner));
  }

  private byte[] changed(byte[] scanner) {
    ClassNode node = new ClassNode();
    new ClassReader(scanner).accept(node, 0);
    node.methods.stream().filter(method -> method.name.equals("<clinit>")).forEach(this::takeOut);
    node.fields.removeIf(field -> texts.containsKey(field.name));
    node.methods.forEach(this::putIn);
    ClassWriter writer = new ClassWriter(0);
    node.accept(writer);
    return writer.toByteArray();
  }

  /** Finds a text, its compilation and the field that keeps the pattern. */
  private void takeOut(MethodNode start) {
    for (AbstractInsnNode step : start.instructions.toArray()) {
      if (step instanceof LdcInsnNode text
          && isCompilation(text.getNext())
          && text.getNext().getNext() instanceof FieldInsnNode field) {
        texts.put(field.name, text.cst);
        start.instructions.remove(text.getNext());
        start.instructions.remove(field);
        start.instructions.remove(text);
      }
    }
  }

  private static boolean isCompilation(AbstractInsnNode step) {
    return step instanceof MethodInsnNode call
        && call.owner.equals(PATTERN)
        && call.name.equals("compile");
  }

  private void putIn(MethodNode method) {
    for (AbstractInsnNode step : method.instructions.toArray()) {
      if (step instanceof FieldInsnNode field && texts.containsKey(field.name)) {
        InsnList late = new InsnList();
        late.add(new LdcInsnNode(texts.get(field.name)));
        late.add(
            new MethodInsnNode(
                Opcodes.INVOKESTATIC, PATTERN, "compile", "(Ljava/lang/String;)L" + PATTERN + ";"));
        method.instructions.insert(field, late);
        method.instructions.remove(field);
      }
    }
  }
}

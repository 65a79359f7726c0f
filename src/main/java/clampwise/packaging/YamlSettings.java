package clampwise.packaging;

import java.util.Map;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;
import org.objectweb.asm.tree.TypeInsnNode;

/**
 * Lets the settings of the YAML parser begin with a schema that resolves nothing: the reader asks
 * for events only, and the patterns of the usual schema take a twentieth of a start.
 */
final class YamlSettings {

  static final String BUILDER = "org/snakeyaml/engine/v2/api/LoadSettingsBuilder";
  static final String USUAL = "org/snakeyaml/engine/v2/schema/JsonSchema";
  static final String PLAIN = "clampwise/source/PlainSchema";

  private YamlSettings() {}

  /** The class that changed, by internal name; nothing without both classes. */
  static Map<String, byte[]> of(Map<String, byte[]> classes) {
    byte[] builder = classes.get(BUILDER);
    return builder == null || !classes.containsKey(PLAIN)
        ? Map.of()
        : Map.of(BUILDER, changed(builder));
  }

  private static byte[] changed(byte[] builder) {
    ClassNode node = new ClassNode();
    new ClassReader(builder).accept(node, 0);
    for (MethodNode method : node.methods) {
      method.instructions.forEach(YamlSettings::change);
    }
    ClassWriter writer = new ClassWriter(0);
    node.accept(writer);
    return writer.toByteArray();
  }

  private static void change(AbstractInsnNode step) {
    if (step instanceof TypeInsnNode type && type.desc.equals(USUAL)) {
      type.desc = PLAIN;
    }
    if (step instanceof MethodInsnNode call && call.owner.equals(USUAL)) {
      call.owner = PLAIN;
    }
  }
}

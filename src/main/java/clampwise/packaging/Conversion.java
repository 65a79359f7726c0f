package clampwise.packaging;

import java.util.Map;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;

/** Turns a value on the stack from one type into another as a lambda does. */
final class Conversion {

  private static final Map<String, Type> PRIMITIVE_OF =
      Map.of(
          "java/lang/Boolean", Type.BOOLEAN_TYPE,
          "java/lang/Character", Type.CHAR_TYPE,
          "java/lang/Byte", Type.BYTE_TYPE,
          "java/lang/Short", Type.SHORT_TYPE,
          "java/lang/Integer", Type.INT_TYPE,
          "java/lang/Long", Type.LONG_TYPE,
          "java/lang/Float", Type.FLOAT_TYPE,
          "java/lang/Double", Type.DOUBLE_TYPE);

  private Conversion() {}

  static void write(GeneratorAdapter code, Type from, Type to) {
    if (from.equals(to)) {
      return;
    }
    if (to.getSort() == Type.VOID) {
      drop(code, from);
    } else if (isPrimitive(from) && isPrimitive(to)) {
      code.cast(from, to);
    } else if (isPrimitive(from)) {
      code.valueOf(from);
    } else if (isPrimitive(to)) {
      unbox(code, from, to);
    } else {
      code.checkCast(to);
    }
  }

  private static void unbox(GeneratorAdapter code, Type from, Type to) {
    Type boxed = PRIMITIVE_OF.getOrDefault(from.getInternalName(), to);
    code.unbox(boxed);
    if (!boxed.equals(to)) {
      code.cast(boxed, to);
    }
  }

  private static void drop(GeneratorAdapter code, Type from) {
    if (from.getSize() == 2) {
      code.visitInsn(Opcodes.POP2);
    } else if (from.getSize() == 1) {
      code.visitInsn(Opcodes.POP);
    }
  }

  private static boolean isPrimitive(Type type) {
    return type.getSort() < Type.ARRAY;
  }
}

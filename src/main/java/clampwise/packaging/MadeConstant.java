package clampwise.packaging;

import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;

/** Writes values that have no parts. */
final class MadeConstant {

  private MadeConstant() {}

  static void write(GeneratorAdapter code, Object value) {
    if (value instanceof String text) {
      code.push(text);
    } else if (value instanceof Class<?> type) {
      code.push(Type.getType(type));
    } else if (value instanceof Enum<?> word) {
      Type type = Type.getType(word.getDeclaringClass());
      code.getStatic(type, word.name(), type);
    } else {
      writeBoxed(code, value);
    }
  }

  private static void writeBoxed(GeneratorAdapter code, Object value) {
    if (value instanceof Double number) {
      code.push(number);
      code.valueOf(Type.DOUBLE_TYPE);
    } else if (value instanceof Integer number) {
      code.push(number);
      code.valueOf(Type.INT_TYPE);
    } else if (value instanceof Boolean flag) {
      code.push(flag);
      code.valueOf(Type.BOOLEAN_TYPE);
    } else {
      throw new IllegalStateException("no code makes a " + value.getClass().getName());
    }
  }
}

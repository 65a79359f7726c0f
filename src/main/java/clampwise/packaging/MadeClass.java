package clampwise.packaging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/**
 * Writes a class that makes one value: records, lists, sets and maps of them, words, numbers and
 * constants. Maps and sets keep their order.
 */
final class MadeClass {

  /** Name of the method that makes the value. */
  static final String MAKE = "make";

  private static final Type OBJECT = Type.getType(Object.class);
  private static final Type OPTIONAL = Type.getType(Optional.class);
  private static final Type LIST = Type.getType(List.class);
  private static final Type NEW_LIST = Type.getType(ArrayList.class);
  private static final Type NEW_SET = Type.getType(LinkedHashSet.class);
  private static final Type NEW_MAP = Type.getType(LinkedHashMap.class);
  private static final Type COLLECTIONS = Type.getType(Collections.class);

  private final Type self;
  private final ClassWriter type = new ClassWriter(ClassWriter.COMPUTE_MAXS);
  private int parts;

  private MadeClass(String name) {
    this.self = Type.getObjectType(name);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    type.visit(Opcodes.V11, access, name, null, OBJECT.getInternalName(), null);
  }

  /**
   * The class file.
   *
   * @param name internal name; its package must have all types of the value in reach
   */
  static byte[] of(String name, Object value) {
    MadeClass made = new MadeClass(name);
    made.method(MAKE, value);
    made.type.visitEnd();
    return made.type.toByteArray();
  }

  /** The method that makes a value. */
  static Method maker(String name, Object value) {
    return new Method(name, MadeParts.typeOf(value), new Type[0]);
  }

  private Method method(String name, Object value) {
    Method method = maker(name, value);
    GeneratorAdapter code =
        new GeneratorAdapter(Opcodes.ACC_STATIC, method, null, new Type[0], type);
    writeHere(code, value);
    code.returnValue();
    code.endMethod();
    return method;
  }

  private void write(GeneratorAdapter code, Object value) {
    if (MadeParts.isLong(value)) {
      code.invokeStatic(self, method("part" + parts++, value));
    } else {
      writeHere(code, value);
    }
  }

  private void writeHere(GeneratorAdapter code, Object value) {
    if (value instanceof Record written) {
      writeRecord(code, written);
    } else if (value instanceof Optional<?> optional) {
      optional.ifPresent(held -> write(code, held));
      String make = optional.isPresent() ? "of (Object)" : "empty ()";
      code.invokeStatic(OPTIONAL, Method.getMethod("java.util.Optional " + make));
    } else if (value instanceof List<?> list) {
      writeList(code, list);
    } else if (value instanceof Set<?> set) {
      writeSet(code, set);
    } else if (value instanceof Map<?, ?> map) {
      writeMap(code, map);
    } else {
      MadeConstant.write(code, value);
    }
  }

  private void writeRecord(GeneratorAdapter code, Record written) {
    Type made = Type.getType(written.getClass());
    code.newInstance(made);
    code.dup();
    List<MadeParts.Component> components = MadeParts.components(written);
    for (MadeParts.Component component : components) {
      write(code, component.value());
      if (component.type().getSort() < Type.ARRAY) {
        code.unbox(component.type());
      }
    }
    Type[] types = components.stream().map(MadeParts.Component::type).toArray(Type[]::new);
    code.invokeConstructor(made, new Method("<init>", Type.VOID_TYPE, types));
  }

  /** A long list is made of two, so that no method becomes too long. */
  private void writeList(GeneratorAdapter code, List<?> list) {
    if (MadeParts.isLong(list) && list.size() > 1) {
      code.newInstance(NEW_LIST);
      code.dup();
      write(code, list.subList(0, list.size() / 2));
      code.invokeConstructor(NEW_LIST, Method.getMethod("void <init> (java.util.Collection)"));
      code.dup();
      write(code, list.subList(list.size() / 2, list.size()));
      code.invokeVirtual(NEW_LIST, Method.getMethod("boolean addAll (java.util.Collection)"));
      code.pop();
      seal(code, "List");
    } else {
      writeArray(code, list);
      Method of = Method.getMethod("java.util.List of (Object[])");
      code.visitMethodInsn(
          Opcodes.INVOKESTATIC, LIST.getInternalName(), of.getName(), of.getDescriptor(), true);
    }
  }

  private void writeArray(GeneratorAdapter code, List<?> items) {
    code.push(items.size());
    code.newArray(OBJECT);
    for (int i = 0; i < items.size(); i++) {
      code.dup();
      code.push(i);
      write(code, items.get(i));
      code.arrayStore(OBJECT);
    }
  }

  private void writeSet(GeneratorAdapter code, Set<?> set) {
    code.newInstance(NEW_SET);
    code.dup();
    write(code, List.copyOf(set));
    code.invokeConstructor(NEW_SET, Method.getMethod("void <init> (java.util.Collection)"));
    seal(code, "Set");
  }

  private void writeMap(GeneratorAdapter code, Map<?, ?> map) {
    code.newInstance(NEW_MAP);
    code.dup();
    code.invokeConstructor(NEW_MAP, Method.getMethod("void <init> ()"));
    map.forEach(
        (key, value) -> {
          code.dup();
          write(code, key);
          write(code, value);
          code.invokeVirtual(NEW_MAP, Method.getMethod("Object put (Object, Object)"));
          code.pop();
        });
    seal(code, "Map");
  }

  private static void seal(GeneratorAdapter code, String kind) {
    String type = "java.util." + kind;
    code.invokeStatic(
        COLLECTIONS, Method.getMethod(type + " unmodifiable" + kind + " (" + type + ")"));
  }
}

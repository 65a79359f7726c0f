package clampwise.packaging;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Writes out the joining of texts ({@code a + b}) of one class with a string builder. */
final class JoinedText {

  private static final String FACTORY = "java/lang/invoke/StringConcatFactory";
  private static final char ARGUMENT = '\1';
  private static final char CONSTANT = '\2';
  private static final Type TEXT = Type.getObjectType("java/lang/StringBuilder");
  private static final Type STRING = Type.getObjectType("java/lang/String");
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private final ClassNode type;
  private int count;

  private JoinedText(ClassNode type) {
    this.type = type;
  }

  /** Whether anything was replaced. */
  static boolean replace(ClassNode type) {
    JoinedText joined = new JoinedText(type);
    for (MethodNode method : List.copyOf(type.methods)) {
      for (AbstractInsnNode step : method.instructions.toArray()) {
        if (step instanceof InvokeDynamicInsnNode linked && isJoin(linked)) {
          method.instructions.set(linked, joined.write(linked));
        }
      }
    }
    return joined.count > 0;
  }

  private static boolean isJoin(InvokeDynamicInsnNode linked) {
    return linked.bsm.getOwner().equals(FACTORY)
        && linked.bsm.getName().equals("makeConcatWithConstants");
  }

  private MethodInsnNode write(InvokeDynamicInsnNode linked) {
    int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
    String name = "plain$join" + count++;
    MethodNode method = new MethodNode(access, name, linked.desc, null, null);
    GeneratorAdapter code = new GeneratorAdapter(access, new Method(name, linked.desc), method);
    code.newInstance(TEXT);
    code.dup();
    code.invokeConstructor(TEXT, new Method("<init>", "()V"));
    pieces(code, linked);
    code.invokeVirtual(TEXT, new Method("toString", STRING, new Type[0]));
    code.returnValue();
    code.endMethod();
    type.methods.add(method);
    boolean isInterface = (type.access & Opcodes.ACC_INTERFACE) != 0;
    return new MethodInsnNode(Opcodes.INVOKESTATIC, type.name, name, linked.desc, isInterface);
  }

  private static void pieces(GeneratorAdapter code, InvokeDynamicInsnNode linked) {
    Deque<Object> constants = new ArrayDeque<>(List.of(linked.bsmArgs));
    String recipe = (String) constants.removeFirst();
    Type[] arguments = Type.getArgumentTypes(linked.desc);
    StringBuilder plain = new StringBuilder();
    int next = 0;
    for (char c : recipe.toCharArray()) {
      if (c == ARGUMENT) {
        flush(code, plain);
        code.loadArg(next);
        append(code, arguments[next++]);
      } else {
        plain.append(c == CONSTANT ? String.valueOf(constants.removeFirst()) : c);
      }
    }
    flush(code, plain);
  }

  private static void flush(GeneratorAdapter code, StringBuilder plain) {
    if (plain.length() > 0) {
      code.push(plain.toString());
      append(code, STRING);
      plain.setLength(0);
    }
  }

  private static void append(GeneratorAdapter code, Type type) {
    Type taken =
        switch (type.getSort()) {
          case Type.BYTE, Type.SHORT -> Type.INT_TYPE;
          case Type.OBJECT -> type.equals(STRING) ? STRING : OBJECT;
          case Type.ARRAY -> OBJECT;
          default -> type;
        };
    code.invokeVirtual(TEXT, new Method("append", TEXT, new Type[] {taken}));
  }
}

package clampwise.packaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * Writes out equals, hashCode and toString of a record, which give the same values as those that
 * are linked at run time.
 */
final class RecordMethods {

  private static final String FACTORY = "java/lang/runtime/ObjectMethods";
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");
  private static final Type OBJECTS = Type.getObjectType("java/util/Objects");
  private static final Type TEXT = Type.getObjectType("java/lang/StringBuilder");
  private static final Type STRING = Type.getObjectType("java/lang/String");

  private final ClassNode type;
  private final Type self;
  private final List<Handle> fields = new ArrayList<>();

  private RecordMethods(ClassNode type, InvokeDynamicInsnNode linked) {
    this.type = type;
    this.self = Type.getObjectType(type.name);
    for (int i = 2; i < linked.bsmArgs.length; i++) {
      fields.add((Handle) linked.bsmArgs[i]);
    }
  }

  /** Whether the class is a record with methods that were written out. */
  static boolean replace(ClassNode type) {
    boolean any = false;
    for (MethodNode method : List.copyOf(type.methods)) {
      for (AbstractInsnNode step : method.instructions.toArray()) {
        if (step instanceof InvokeDynamicInsnNode linked && linked.bsm.getOwner().equals(FACTORY)) {
          method.instructions.set(linked, new RecordMethods(type, linked).write(linked));
          any = true;
        }
      }
    }
    return any;
  }

  private MethodInsnNode write(InvokeDynamicInsnNode linked) {
    String name = "plain$" + linked.name;
    int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC;
    MethodNode method = new MethodNode(access, name, linked.desc, null, null);
    GeneratorAdapter code = new GeneratorAdapter(access, new Method(name, linked.desc), method);
    switch (linked.name) {
      case "equals" -> equals(code, method);
      case "hashCode" -> hash(code);
      default -> text(code);
    }
    code.returnValue();
    code.endMethod();
    type.methods.add(method);
    return new MethodInsnNode(Opcodes.INVOKESTATIC, type.name, name, linked.desc, false);
  }

  private void equals(GeneratorAdapter code, MethodNode method) {
    Label differs = new Label();
    code.loadArg(1);
    code.instanceOf(self);
    code.ifZCmp(GeneratorAdapter.EQ, differs);
    for (Handle field : fields) {
      load(code, 0, field);
      load(code, 1, field);
      Type kind = Type.getType(field.getDesc());
      if (isReference(kind)) {
        code.invokeStatic(
            OBJECTS, new Method("equals", Type.BOOLEAN_TYPE, new Type[] {OBJECT, OBJECT}));
        code.ifZCmp(GeneratorAdapter.EQ, differs);
      } else {
        Method compare = new Method("compare", Type.INT_TYPE, new Type[] {kind, kind});
        code.invokeStatic(boxOf(kind), compare);
        code.ifZCmp(GeneratorAdapter.NE, differs);
      }
    }
    code.push(true);
    code.returnValue();
    code.mark(differs);
    method.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
    code.push(false);
  }

  private void hash(GeneratorAdapter code) {
    code.push(0);
    for (Handle field : fields) {
      code.push(31);
      code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
      load(code, 0, field);
      Type kind = Type.getType(field.getDesc());
      Type owner = isReference(kind) ? OBJECTS : boxOf(kind);
      Type taken = isReference(kind) ? OBJECT : kind;
      code.invokeStatic(owner, new Method("hashCode", Type.INT_TYPE, new Type[] {taken}));
      code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
    }
  }

  private void text(GeneratorAdapter code) {
    code.newInstance(TEXT);
    code.dup();
    code.invokeConstructor(TEXT, new Method("<init>", "()V"));
    String before = simpleName() + "[";
    for (Handle field : fields) {
      append(code, before + field.getName() + "=");
      load(code, 0, field);
      Type kind = Type.getType(field.getDesc());
      Type taken = isReference(kind) ? OBJECT : kind;
      code.invokeStatic(STRING, new Method("valueOf", STRING, new Type[] {printed(taken)}));
      code.invokeVirtual(TEXT, new Method("append", TEXT, new Type[] {STRING}));
      before = ", ";
    }
    append(code, fields.isEmpty() ? before + "]" : "]");
    code.invokeVirtual(TEXT, new Method("toString", STRING, new Type[0]));
  }

  private static void append(GeneratorAdapter code, String text) {
    code.push(text);
    code.invokeVirtual(TEXT, new Method("append", TEXT, new Type[] {STRING}));
  }

  private void load(GeneratorAdapter code, int argument, Handle field) {
    code.loadArg(argument);
    if (argument == 1) {
      code.checkCast(self);
    }
    code.getField(self, field.getName(), Type.getType(field.getDesc()));
  }

  private String simpleName() {
    return type.innerClasses.stream()
        .filter(inner -> inner.name.equals(type.name) && inner.innerName != null)
        .map(inner -> inner.innerName)
        .findFirst()
        .orElse(type.name.substring(type.name.lastIndexOf('/') + 1));
  }

  private static boolean isReference(Type kind) {
    return kind.getSort() >= Type.ARRAY;
  }

  /** {@code String.valueOf} knows no byte and no short. */
  private static Type printed(Type kind) {
    return kind.equals(Type.BYTE_TYPE) || kind.equals(Type.SHORT_TYPE) ? Type.INT_TYPE : kind;
  }

  private static Type boxOf(Type primitive) {
    String name =
        switch (primitive.getSort()) {
          case Type.INT -> "Integer";
          case Type.CHAR -> "Character";
          default -> {
            String word = primitive.getClassName();
            yield word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
          }
        };
    return Type.getObjectType("java/lang/" + name);
  }
}

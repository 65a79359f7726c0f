package clampwise.packaging;

import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;

import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/** Writes the class of one lambda. */
final class LambdaWriter {

  /** The method that makes an instance from the captured values. */
  static final String MAKE = "make";

  private static final String ONLY = "ONLY";
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private final Lambda lambda;
  private final Type self;
  private final ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_MAXS);

  private LambdaWriter(Lambda lambda, String name) {
    this.lambda = lambda;
    this.self = Type.getObjectType(name);
  }

  static byte[] write(Lambda lambda, String name, String nestHost, int version) {
    LambdaWriter writer = new LambdaWriter(lambda, name);
    writer.open(nestHost, version);
    writer.constructor();
    writer.maker();
    writer.method();
    writer.out.visitEnd();
    return writer.out.toByteArray();
  }

  private void open(String nestHost, int version) {
    String[] interfaces = {lambda.creation().getReturnType().getInternalName()};
    int access = ACC_FINAL | ACC_SYNTHETIC;
    out.visit(version, access, self.getInternalName(), null, OBJECT.getInternalName(), interfaces);
    out.visitNestHost(nestHost);
    for (int i = 0; i < lambda.captured().length; i++) {
      String type = lambda.captured()[i].getDescriptor();
      out.visitField(ACC_PRIVATE | ACC_FINAL, field(i), type, null, null).visitEnd();
    }
  }

  private void constructor() {
    Method init = new Method("<init>", Type.VOID_TYPE, lambda.captured());
    GeneratorAdapter code = code(ACC_PRIVATE, init);
    code.loadThis();
    code.invokeConstructor(OBJECT, new Method("<init>", "()V"));
    for (int i = 0; i < lambda.captured().length; i++) {
      code.loadThis();
      code.loadArg(i);
      code.putField(self, field(i), lambda.captured()[i]);
    }
    code.returnValue();
    code.endMethod();
  }

  /** A lambda that captures nothing has one instance. */
  private void maker() {
    boolean only = lambda.captured().length == 0;
    if (only) {
      out.visitField(ACC_STATIC | ACC_FINAL, ONLY, self.getDescriptor(), null, null).visitEnd();
      GeneratorAdapter start = code(ACC_STATIC, new Method("<clinit>", "()V"));
      create(start);
      start.putStatic(self, ONLY, self);
      start.returnValue();
      start.endMethod();
    }
    GeneratorAdapter code = code(ACC_STATIC, new Method(MAKE, lambda.creation().getDescriptor()));
    if (only) {
      code.getStatic(self, ONLY, self);
    } else {
      create(code);
    }
    code.returnValue();
    code.endMethod();
  }

  private void create(GeneratorAdapter code) {
    code.newInstance(self);
    code.dup();
    code.loadArgs();
    code.invokeConstructor(self, new Method("<init>", Type.VOID_TYPE, lambda.captured()));
  }

  private void method() {
    GeneratorAdapter code =
        code(ACC_PUBLIC, new Method(lambda.name(), lambda.erased().getDescriptor()));
    if (lambda.isConstructor()) {
      code.newInstance(lambda.given());
      code.dup();
    }
    arguments(code);
    call(code);
    Type wanted = lambda.erased().getReturnType();
    if (wanted.getSort() == Type.VOID) {
      Conversion.write(code, lambda.given(), wanted);
    } else {
      Conversion.write(code, lambda.given(), lambda.shape().getReturnType());
      Conversion.write(code, lambda.shape().getReturnType(), wanted);
    }
    code.returnValue();
    code.endMethod();
  }

  private void arguments(GeneratorAdapter code) {
    Type[] captured = lambda.captured();
    Type[] taken = lambda.taken();
    for (int i = 0; i < captured.length; i++) {
      code.loadThis();
      code.getField(self, field(i), captured[i]);
      Conversion.write(code, captured[i], taken[i]);
    }
    Type[] erased = lambda.erased().getArgumentTypes();
    Type[] shape = lambda.shape().getArgumentTypes();
    for (int i = 0; i < erased.length; i++) {
      code.loadArg(i);
      Conversion.write(code, erased[i], shape[i]);
      Conversion.write(code, shape[i], taken[captured.length + i]);
    }
  }

  private void call(GeneratorAdapter code) {
    Handle method = lambda.method();
    int step =
        switch (method.getTag()) {
          case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
          case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
          default -> method.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    code.visitMethodInsn(
        step, method.getOwner(), method.getName(), method.getDesc(), method.isInterface());
  }

  private GeneratorAdapter code(int access, Method method) {
    return new GeneratorAdapter(
        access,
        method,
        out.visitMethod(access, method.getName(), method.getDescriptor(), null, null));
  }

  private static String field(int index) {
    return "value" + index;
  }
}

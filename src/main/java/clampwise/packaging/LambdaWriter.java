package clampwise.packaging;

import static org.objectweb.asm.Opcodes.ACC_FINAL;
import static org.objectweb.asm.Opcodes.ACC_PRIVATE;
import static org.objectweb.asm.Opcodes.ACC_PUBLIC;
import static org.objectweb.asm.Opcodes.ACC_STATIC;
import static org.objectweb.asm.Opcodes.ACC_SYNTHETIC;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/**
 * Writes one class for all lambdas of a host that implement the same interface: an instance knows
 * which of them it is. Each class more costs a start as much as reading three lines of a job.
 */
final class LambdaWriter {

  private static final String WHICH = "which";
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");

  private final List<Lambda> lambdas;
  private final Type self;
  private final ClassWriter out = new ClassWriter(ClassWriter.COMPUTE_FRAMES);

  private LambdaWriter(List<Lambda> lambdas, String name) {
    this.lambdas = lambdas;
    this.self = Type.getObjectType(name);
  }

  /** The class; its methods {@link #maker} make the instances from the captured values. */
  static byte[] write(List<Lambda> lambdas, String name, String nestHost, int version) {
    LambdaWriter writer = new LambdaWriter(lambdas, name);
    writer.open(nestHost, version);
    writer.constructors();
    for (int i = 0; i < lambdas.size(); i++) {
      writer.writeMaker(i);
    }
    writer.method();
    writer.out.visitEnd();
    return writer.out.toByteArray();
  }

  /** Name of the method that makes an instance of a lambda. */
  static String maker(int lambda) {
    return "make" + lambda;
  }

  private void open(String nestHost, int version) {
    String[] interfaces = {lambdas.get(0).creation().getReturnType().getInternalName()};
    int access = ACC_FINAL | ACC_SYNTHETIC;
    out.visit(version, access, self.getInternalName(), null, OBJECT.getInternalName(), interfaces);
    out.visitNestHost(nestHost);
    Map<String, Type> fields = new LinkedHashMap<>(Map.of(WHICH, Type.INT_TYPE));
    for (Lambda lambda : lambdas) {
      for (int i = 0; i < lambda.captured().length; i++) {
        Type stored = stored(lambda.captured()[i]);
        fields.put(field(i, stored), stored);
      }
    }
    fields.forEach(
        (name, type) ->
            out.visitField(ACC_PRIVATE, name, type.getDescriptor(), null, null).visitEnd());
  }

  /** One constructor for each kind of captured values. */
  private void constructors() {
    Set<Method> written = new LinkedHashSet<>();
    for (Lambda lambda : lambdas) {
      if (written.add(constructor(lambda))) {
        write(constructor(lambda));
      }
    }
  }

  private void write(Method constructor) {
    GeneratorAdapter code = code(ACC_PRIVATE, constructor);
    code.loadThis();
    code.invokeConstructor(OBJECT, new Method("<init>", "()V"));
    code.loadThis();
    code.loadArg(0);
    code.putField(self, WHICH, Type.INT_TYPE);
    for (int i = 1; i < constructor.getArgumentTypes().length; i++) {
      Type stored = constructor.getArgumentTypes()[i];
      code.loadThis();
      code.loadArg(i);
      code.putField(self, field(i - 1, stored), stored);
    }
    code.returnValue();
    code.endMethod();
  }

  private static Method constructor(Lambda lambda) {
    Type[] captured = lambda.captured();
    Type[] taken = new Type[captured.length + 1];
    taken[0] = Type.INT_TYPE;
    for (int i = 0; i < captured.length; i++) {
      taken[i + 1] = stored(captured[i]);
    }
    return new Method("<init>", Type.VOID_TYPE, taken);
  }

  private void writeMaker(int index) {
    Lambda lambda = lambdas.get(index);
    GeneratorAdapter code =
        code(ACC_STATIC, new Method(maker(index), lambda.creation().getDescriptor()));
    code.newInstance(self);
    code.dup();
    code.push(index);
    code.loadArgs();
    code.invokeConstructor(self, constructor(lambda));
    code.returnValue();
    code.endMethod();
  }

  private void method() {
    Lambda any = lambdas.get(0);
    GeneratorAdapter code = code(ACC_PUBLIC, new Method(any.name(), any.erased().getDescriptor()));
    Label[] starts = lambdas.stream().map(lambda -> new Label()).toArray(Label[]::new);
    if (starts.length > 1) {
      code.loadThis();
      code.getField(self, WHICH, Type.INT_TYPE);
      code.visitTableSwitchInsn(0, starts.length - 1, starts[starts.length - 1], starts);
    }
    for (int i = 0; i < starts.length; i++) {
      code.mark(starts[i]);
      body(code, lambdas.get(i));
    }
    code.endMethod();
  }

  private void body(GeneratorAdapter code, Lambda lambda) {
    if (lambda.isConstructor()) {
      code.newInstance(lambda.given());
      code.dup();
    }
    arguments(code, lambda);
    call(code, lambda);
    Type wanted = lambda.erased().getReturnType();
    if (wanted.getSort() == Type.VOID) {
      Conversion.write(code, lambda.given(), wanted);
    } else {
      Conversion.write(code, lambda.given(), lambda.shape().getReturnType());
      Conversion.write(code, lambda.shape().getReturnType(), wanted);
    }
    code.returnValue();
  }

  private void arguments(GeneratorAdapter code, Lambda lambda) {
    Type[] captured = lambda.captured();
    Type[] taken = lambda.taken();
    for (int i = 0; i < captured.length; i++) {
      Type stored = stored(captured[i]);
      code.loadThis();
      code.getField(self, field(i, stored), stored);
      Conversion.write(code, stored, captured[i]);
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

  private static void call(GeneratorAdapter code, Lambda lambda) {
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

  /** Objects of all types share fields. */
  private static Type stored(Type captured) {
    return captured.getSort() < Type.ARRAY ? captured : OBJECT;
  }

  private static String field(int index, Type stored) {
    return "value" + index + stored.getDescriptor().charAt(0);
  }
}

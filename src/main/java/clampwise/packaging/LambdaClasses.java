package clampwise.packaging;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/** Replaces the lambdas of one class by generated classes beside it, one for each interface. */
final class LambdaClasses {

  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";

  /** Only a serialisable lambda without further interfaces or bridges is taken of the long form. */
  private static final int SERIALISABLE = 1;

  private static final int BRIDGED = 4;

  private final ClassNode host;
  private final Access access;
  private final Map<String, List<Lambda>> byClass = new TreeMap<>();
  private final Map<Kind, String> names = new HashMap<>();

  /** What lambdas of one class have in common. */
  private record Kind(Type type, String name, Type erased) {}

  LambdaClasses(ClassNode host, Access access) {
    this.host = host;
    this.access = access;
  }

  /** The generated classes by internal name. */
  Map<String, byte[]> made() {
    Map<String, byte[]> made = new TreeMap<>();
    byClass.forEach(
        (name, lambdas) ->
            made.put(name, LambdaWriter.write(lambdas, name, Access.nestOf(host), Opcodes.V11)));
    return made;
  }

  /** Whether anything was replaced. */
  boolean replace() {
    boolean any = false;
    for (MethodNode method : host.methods) {
      for (AbstractInsnNode step : method.instructions.toArray()) {
        if (step instanceof InvokeDynamicInsnNode dynamic) {
          Optional<MethodInsnNode> call = lambda(dynamic).map(this::make);
          call.ifPresent(plain -> method.instructions.set(dynamic, plain));
          any |= call.isPresent();
        }
      }
    }
    return any;
  }

  private Optional<Lambda> lambda(InvokeDynamicInsnNode dynamic) {
    if (!dynamic.bsm.getOwner().equals(FACTORY) || !isSimple(dynamic)) {
      return Optional.empty();
    }
    Handle method = (Handle) dynamic.bsmArgs[1];
    Type shape = (Type) dynamic.bsmArgs[2];
    boolean open =
        !method.getOwner().startsWith("[")
            && access.isOpen(method, host)
            && access.isVisible(shape, host)
            && access.isVisible(Type.getMethodType(method.getDesc()), host);
    return open
        ? Optional.of(
            new Lambda(
                dynamic.name,
                Type.getMethodType(dynamic.desc),
                (Type) dynamic.bsmArgs[0],
                method,
                shape))
        : Optional.empty();
  }

  private static boolean isSimple(InvokeDynamicInsnNode dynamic) {
    return dynamic.bsm.getName().equals("metafactory")
        || dynamic.bsmArgs.length == 4 && dynamic.bsmArgs[3].equals(SERIALISABLE)
        || dynamic.bsmArgs.length == 5
            && dynamic.bsmArgs[3].equals(SERIALISABLE | BRIDGED)
            && dynamic.bsmArgs[4].equals(0);
  }

  private MethodInsnNode make(Lambda lambda) {
    Kind kind = new Kind(lambda.creation().getReturnType(), lambda.name(), lambda.erased());
    String next = host.name + "$$Plain" + names.size();
    String name = names.computeIfAbsent(kind, key -> next);
    List<Lambda> lambdas = byClass.computeIfAbsent(name, key -> new ArrayList<>());
    lambdas.add(lambda);
    return new MethodInsnNode(
        Opcodes.INVOKESTATIC,
        name,
        LambdaWriter.maker(lambdas.size() - 1),
        lambda.creation().getDescriptor(),
        false);
  }
}

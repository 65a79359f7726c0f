package clampwise.packaging;

import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * A lambda or method reference as the compiler describes it.
 *
 * @param name method of the interface
 * @param creation captured values to interface
 * @param erased signature of the interface's method
 * @param method what is called
 * @param shape signature of the interface's method with its type arguments
 */
record Lambda(String name, Type creation, Type erased, Handle method, Type shape) {

  Type[] captured() {
    return creation.getArgumentTypes();
  }

  /** What the called method takes, its receiver first. */
  Type[] taken() {
    Type[] arguments = Type.getArgumentTypes(method.getDesc());
    if (!hasReceiver()) {
      return arguments;
    }
    Type[] all = new Type[arguments.length + 1];
    all[0] = Type.getObjectType(method.getOwner());
    System.arraycopy(arguments, 0, all, 1, arguments.length);
    return all;
  }

  Type given() {
    return isConstructor()
        ? Type.getObjectType(method.getOwner())
        : Type.getReturnType(method.getDesc());
  }

  boolean isConstructor() {
    return method.getTag() == Opcodes.H_NEWINVOKESPECIAL;
  }

  private boolean hasReceiver() {
    return method.getTag() != Opcodes.H_INVOKESTATIC && !isConstructor();
  }
}

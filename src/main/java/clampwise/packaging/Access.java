package clampwise.packaging;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.MethodNode;

/** What a class generated beside its host may call. */
final class Access {

  private final Map<String, byte[]> classes;
  private final Map<String, ClassNode> read = new HashMap<>();

  Access(Map<String, byte[]> classes) {
    this.classes = classes;
  }

  /** Whether a nestmate of the host may call a method without the help of a method handle. */
  boolean isOpen(Handle method, ClassNode host) {
    if (method.getOwner().equals(host.name)) {
      Optional<MethodNode> own = declared(host, method.getName(), method.getDesc());
      if (own.isPresent()) {
        return isPlainCall(method, own.get());
      }
    }
    return method.getTag() != Opcodes.H_INVOKESPECIAL
        && isVisible(method.getOwner(), host)
        && (isNear(method, host) || isPublic(method.getOwner(), method));
  }

  /** Whether a method that is not public is in reach: of the same package or the same nest. */
  private boolean isNear(Handle method, ClassNode host) {
    Optional<ClassNode> owner = node(method.getOwner());
    if (owner.isEmpty() || !packageOf(method.getOwner()).equals(packageOf(host.name))) {
      return false;
    }
    boolean sameNest = nestOf(owner.get()).equals(nestOf(host));
    return declared(owner.get(), method.getName(), method.getDesc())
        .filter(found -> sameNest || (found.access & Opcodes.ACC_PRIVATE) == 0)
        .isPresent();
  }

  /** The class whose nest a class belongs to. */
  static String nestOf(ClassNode type) {
    return type.nestHostClass == null ? type.name : type.nestHostClass;
  }

  /** A private method is called like any other by a nestmate; {@code super.m()} cannot be. */
  private static boolean isPlainCall(Handle method, MethodNode own) {
    boolean isPrivate = (own.access & Opcodes.ACC_PRIVATE) != 0;
    return method.getTag() != Opcodes.H_INVOKESPECIAL || isPrivate;
  }

  /** Whether all types of a descriptor can be named beside the host. */
  boolean isVisible(Type descriptor, ClassNode host) {
    return isNameable(descriptor.getReturnType(), host)
        && Arrays.stream(descriptor.getArgumentTypes()).allMatch(type -> isNameable(type, host));
  }

  private boolean isNameable(Type type, ClassNode host) {
    Type item = type.getSort() == Type.ARRAY ? type.getElementType() : type;
    return item.getSort() != Type.OBJECT || isVisible(item.getInternalName(), host);
  }

  private boolean isVisible(String type, ClassNode host) {
    if (packageOf(type).equals(packageOf(host.name))) {
      return true;
    }
    return node(type)
        .map(node -> (node.access & Opcodes.ACC_PUBLIC) != 0)
        .orElseGet(() -> loaded(type).map(c -> Modifier.isPublic(c.getModifiers())).orElse(false));
  }

  private boolean isPublic(String owner, Handle method) {
    Optional<ClassNode> node = node(owner);
    if (node.isEmpty()) {
      return loaded(owner).map(type -> isPublic(type, method)).orElse(false);
    }
    Optional<MethodNode> found = declared(node.get(), method.getName(), method.getDesc());
    if (found.isPresent()) {
      return (found.get().access & Opcodes.ACC_PUBLIC) != 0;
    }
    return isInherited(node.get(), method);
  }

  private boolean isInherited(ClassNode type, Handle method) {
    if (method.getName().equals("<init>")) {
      return false;
    }
    boolean above = type.superName != null && isPublic(type.superName, method);
    return above || type.interfaces.stream().anyMatch(each -> isPublic(each, method));
  }

  private static boolean isPublic(Class<?> type, Handle method) {
    if (method.getName().equals("<init>")) {
      return Arrays.stream(type.getConstructors())
          .anyMatch(each -> Type.getConstructorDescriptor(each).equals(method.getDesc()));
    }
    boolean own =
        Arrays.stream(type.getMethods())
            .filter(each -> each.getName().equals(method.getName()))
            .anyMatch(each -> Type.getMethodDescriptor(each).equals(method.getDesc()));
    return own || type.isInterface() && isPublic(Object.class, method);
  }

  private Optional<ClassNode> node(String name) {
    byte[] bytes = classes.get(name);
    return bytes == null
        ? Optional.empty()
        : Optional.of(read.computeIfAbsent(name, key -> outline(bytes)));
  }

  private static ClassNode outline(byte[] bytes) {
    ClassNode node = new ClassNode();
    new ClassReader(bytes).accept(node, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
    return node;
  }

  private static Optional<MethodNode> declared(ClassNode type, String name, String descriptor) {
    return type.methods.stream()
        .filter(method -> method.name.equals(name) && method.desc.equals(descriptor))
        .findFirst();
  }

  private static Optional<Class<?>> loaded(String name) {
    try {
      @Nullable ClassLoader platform = ClassLoader.getPlatformClassLoader();
      return Optional.of(Class.forName(name.replace('/', '.'), false, platform));
    } catch (ClassNotFoundException | LinkageError e) {
      return Optional.empty();
    }
  }

  private static String packageOf(String name) {
    return name.substring(0, Math.max(0, name.lastIndexOf('/')));
  }
}

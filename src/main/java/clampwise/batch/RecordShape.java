package clampwise.batch;

import java.io.IOException;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;

/** A record: its components one after the other, made again by its constructor. */
final class RecordShape implements Shape {

  private static final MethodHandles.Lookup LOOKUP = MethodHandles.lookup();

  private record Component(MethodHandle accessor, Shape shape) {}

  private final List<Component> components = new ArrayList<>();
  private final MethodHandle constructor;

  RecordShape(Class<?> type, Shapes shapes) {
    List<Class<?>> types = new ArrayList<>();
    try {
      for (RecordComponent component : type.getRecordComponents()) {
        types.add(component.getType());
        components.add(
            new Component(
                accessor(component.getAccessor()), shapes.of(component.getGenericType())));
      }
      Constructor<?> made = type.getDeclaredConstructor(types.toArray(Class<?>[]::new));
      made.setAccessible(true);
      constructor =
          LOOKUP
              .unreflectConstructor(made)
              .asSpreader(Object[].class, types.size())
              .asType(MethodType.methodType(Object.class, Object[].class));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a record cannot be read: " + type, e);
    }
  }

  private static MethodHandle accessor(Method method) throws IllegalAccessException {
    method.setAccessible(true);
    MethodType plain = MethodType.methodType(Object.class, Object.class);
    return LOOKUP.unreflect(method).asType(plain);
  }

  @Override
  public void write(Object value, CodecOut out) throws IOException {
    for (Component component : components) {
      component.shape().write(get(component, value), out);
    }
  }

  @SuppressWarnings("CatchingUnchecked") // what a method handle may throw
  private static Object get(Component component, Object value) {
    try {
      return (Object) component.accessor().invokeExact(value);
    } catch (RuntimeException | Error e) {
      throw e;
    } catch (Throwable e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  @SuppressWarnings("CatchingUnchecked") // what a method handle may throw
  public Object read(CodecIn in) throws IOException {
    Object[] values = new Object[components.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = components.get(i).shape().read(in);
    }
    try {
      return (Object) constructor.invokeExact(values);
    } catch (RuntimeException e) {
      throw new IOException("no record can hold these values", e);
    } catch (Error e) {
      throw e;
    } catch (Throwable e) {
      throw new IllegalStateException(e);
    }
  }
}

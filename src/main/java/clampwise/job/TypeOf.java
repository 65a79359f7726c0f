package clampwise.job;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import org.jspecify.annotations.Nullable;

/**
 * A type of something, such as a list of lengths.
 *
 * @param raw what holds it
 * @param item what it is of
 */
public record TypeOf(Class<?> raw, Type item) implements ParameterizedType {

  /** A type as a class or in this form, which compares and can be written down. */
  static Type plain(Type type) {
    return type instanceof ParameterizedType generic
        ? new TypeOf((Class<?>) generic.getRawType(), plain(generic.getActualTypeArguments()[0]))
        : type;
  }

  @Override
  public Type[] getActualTypeArguments() {
    return new Type[] {item};
  }

  @Override
  public Type getRawType() {
    return raw;
  }

  @Override
  public @Nullable Type getOwnerType() {
    return raw.getDeclaringClass();
  }
}

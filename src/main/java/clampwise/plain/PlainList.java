package clampwise.plain;

import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;
import java.util.function.Consumer;

/** A list that nobody can change. */
final class PlainList<T> extends AbstractList<T> implements RandomAccess {
  private final T[] values;

  /** Keeps the array, which nobody else may hold. */
  PlainList(T[] values) {
    this.values = values;
  }

  @Override
  public T get(int index) {
    return values[index];
  }

  @Override
  public int size() {
    return values.length;
  }

  @Override
  public void forEach(Consumer<? super T> action) {
    for (T value : values) {
      action.accept(value);
    }
  }

  @Override
  public Object[] toArray() {
    return Arrays.copyOf(values, values.length, Object[].class);
  }
}

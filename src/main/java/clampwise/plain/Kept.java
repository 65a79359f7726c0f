package clampwise.plain;

import java.util.function.BinaryOperator;
import org.jspecify.annotations.Nullable;

/** One value out of many: the first, or what an operator makes of all. */
final class Kept<T> implements Step<T> {
  private final @Nullable BinaryOperator<T> operator;
  private @Nullable T value;

  Kept(@Nullable BinaryOperator<T> operator) {
    this.operator = operator;
  }

  @Override
  public boolean take(T next) {
    T before = value;
    value = before == null || operator == null ? next : operator.apply(before, next);
    return operator != null;
  }

  @Nullable T value() {
    return value;
  }
}

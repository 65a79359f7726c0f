package clampwise.plain;

/** Hands on a number of values and then stops. */
final class Limit<T> implements Step<T> {
  private final Step<? super T> next;
  private long left;
  private boolean wanted = true;

  Limit(long left, Step<? super T> next) {
    this.left = left;
    this.next = next;
  }

  @Override
  public boolean take(T value) {
    left--;
    wanted = next.take(value);
    return wanted && left > 0;
  }

  /** Whether the next step would take more. */
  boolean wanted() {
    return wanted;
  }
}

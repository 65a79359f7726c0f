package clampwise.plain;

import java.util.stream.BaseStream;

/** What streams of all kinds have in common here: one thread, one order, nothing to close. */
abstract class OneThread<T, S extends BaseStream<T, S>> implements BaseStream<T, S> {

  /** This stream. */
  abstract S same();

  @Override
  public final boolean isParallel() {
    return false;
  }

  @Override
  public final S sequential() {
    return same();
  }

  @Override
  public final S parallel() {
    return same();
  }

  @Override
  public final S unordered() {
    return same();
  }

  @Override
  public final void close() {
    // nothing is held
  }
}

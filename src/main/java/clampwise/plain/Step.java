package clampwise.plain;

/** What is done with each value of a stream. */
interface Step<T> {

  /** Takes a value; false if no further one is wanted. */
  boolean take(T value);
}

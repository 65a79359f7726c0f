package clampwise.cli;

import java.io.IOException;

/** The output has nowhere to go: a full disk, or a reader that has left. */
final class UnwritableException extends RuntimeException {

  private final boolean readerLeft;

  UnwritableException(IOException cause) {
    super(cause);
    this.readerLeft = String.valueOf(cause.getMessage()).contains("pipe");
  }

  /** Whether the reader at the other end of a pipe has left, which is no news to the user. */
  boolean readerLeft() {
    return readerLeft;
  }
}

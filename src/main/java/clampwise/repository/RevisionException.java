package clampwise.repository;

/** A revision that cannot be compared with; the message says why. */
public final class RevisionException extends Exception {

  private static final long serialVersionUID = 1;

  RevisionException(String message) {
    super(message);
  }
}

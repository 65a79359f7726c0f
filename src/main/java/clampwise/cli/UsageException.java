package clampwise.cli;

/** What was asked cannot be done as asked; the message tells the user why and what would work. */
final class UsageException extends RuntimeException {

  UsageException(String message) {
    super(message);
  }
}

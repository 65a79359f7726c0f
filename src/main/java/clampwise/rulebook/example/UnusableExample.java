package clampwise.rulebook.example;

/** An example from which no job can be made. */
public final class UnusableExample extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnusableExample(String why) {
    super(why);
  }
}

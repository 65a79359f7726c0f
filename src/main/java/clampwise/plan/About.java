package clampwise.plan;

/**
 * What a mark of a drawing is about, for readers that answer to it.
 *
 * @param kind {@code module}, {@code finding}, or empty
 * @param name name of the module, or number of the finding in the list
 * @param title what it says when asked
 */
public record About(String kind, String name, String title) {

  /** Nothing that could be asked. */
  public static final About NOTHING = new About("", "", "");

  static About module(String name, String title) {
    return new About("module", name, title);
  }

  static About finding(int number, String title) {
    return new About("finding", Integer.toString(number), title);
  }

  /** Whether there is something to say. */
  public boolean isSomething() {
    return !kind.isEmpty();
  }
}

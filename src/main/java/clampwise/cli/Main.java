package clampwise.cli;

import clampwise.rulebook.RulePages;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /** Runs one command and answers its exit code to the shell. */
  public static void main(String[] arguments) {
    Console console = Terminals.console();
    System.exit(new Clampwise(console, ReviewDesk::new, RulePages::all).run(arguments));
  }
}

package clampwise.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;

/** Faults of the program itself: one line for users, the trace for developers who ask for it. */
final class Faults {

  /** Environment variable that asks for the trace. */
  static final String TRACE = "CLAMPWISE_TRACE";

  private final Console console;

  Faults(Console console) {
    this.console = console;
  }

  /** Reports a fault met while working on something. */
  void report(String about, Throwable fault) {
    console.complain(text(about, fault));
    trace(fault);
  }

  /** Prints the trace of a fault for developers, if they ask for it. */
  void trace(Throwable fault) {
    if (!console.environment().getOrDefault(TRACE, "").isEmpty()) {
      printTrace(fault);
    }
  }

  /** What users are told of a fault met while working on something. */
  static String text(String about, Throwable fault) {
    return about + ": internal fault (" + summary(fault) + "); please report it with the job file";
  }

  private static String summary(Throwable fault) {
    String message = fault.getMessage();
    String name = fault.getClass().getSimpleName();
    return message == null ? name : name + ": " + message;
  }

  private void printTrace(Throwable fault) {
    StringWriter text = new StringWriter();
    fault.printStackTrace(new PrintWriter(text));
    new java.io.PrintStream(console.err(), true, StandardCharsets.UTF_8).print(text);
  }
}

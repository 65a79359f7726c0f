package clampwise.cli;

/** {@code clampwise schema}: the published JSON Schemas. */
final class SchemaCommand {

  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  /** What a schema describes. */
  enum Of {
    JOB("job"),
    REVIEW("review"),
    TAKEOFF("takeoff"),
    POLICY("policy"),
    ACCEPTED("accepted"),
    DEBTS("debts");

    private final String file;

    Of(String file) {
      this.file = file;
    }

    /** The option that asks for it. */
    String option() {
      return "--" + file;
    }
  }

  /** Prints a schema. */
  int run(Of what) {
    console.print(Resources.text("/clampwise/shared/" + what.file + ".schema.json"));
    return ExitCode.CLEAR;
  }
}

package clampwise.cli;

/** {@code clampwise schema}: the published JSON Schemas. */
final class SchemaCommand {

  private final Console console;

  SchemaCommand(Console console) {
    this.console = console;
  }

  /** Prints the schema of reviews or of jobs. */
  int run(boolean review) {
    console.print(
        Resources.text(
            review ? "/clampwise/shared/review.schema.json" : "/clampwise/shared/job.schema.json"));
    return ExitCode.CLEAR;
  }
}

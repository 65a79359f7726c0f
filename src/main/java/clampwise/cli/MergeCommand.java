package clampwise.cli;

import clampwise.batch.BuildIdentity;
import clampwise.batch.JobResult;
import clampwise.batch.Joining;
import clampwise.batch.Part;
import clampwise.report.Paint;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** {@code clampwise merge}: joins the parts of a run and says what one run would have said. */
final class MergeCommand {

  private final Console console;
  private final Desk desk;

  MergeCommand(Console console, Desk desk) {
    this.console = console;
    this.desk = desk;
  }

  /**
   * Joins the parts in some files.
   *
   * @param asked how the result is to be printed; its jobs are the files
   */
  int run(ReviewOptions asked) {
    asked.reports().checkWithoutFacts();
    List<Part> parts = asked.jobs().stream().map(MergeCommand::read).toList();
    Joining joining = Joining.of(parts, asked.jobs());
    Optional<String> obstacle = joining.obstacle(BuildIdentity.read());
    if (obstacle.isPresent()) {
      throw new UsageException("these parts cannot be joined: " + obstacle.get());
    }
    checkOwnRules(parts.get(0));
    return say(joining.results(), asked.withThreshold(parts.get(0).failOn()));
  }

  private static Part read(String name) {
    try {
      return Part.read(Path.of(name));
    } catch (NoSuchFileException e) {
      throw new UsageException("there is no file " + name);
    } catch (IOException | InvalidPathException e) {
      throw new UsageException(
          name + " is no whole part of a review; write one with clampwise review --part K/N --to");
    }
  }

  /** Reports quote the pages of rules. */
  private void checkOwnRules(Part part) {
    if (!part.ownRules().equals(desk.own().digest())) {
      throw new UsageException(
          part.ownRules().isEmpty()
              ? "the parts were made without own rules; write --no-own-rules"
              : "the parts were made with own rules; name the same folder with --own-rules");
    }
  }

  private int say(List<JobResult> results, ReviewOptions options) {
    Paint paint = ReviewCommand.paint(options.colouring(), console);
    int own = new ReviewCommand(console, desk).ownRules();
    ResultSink sink = new ResultSink(options, new ReviewPrinter(console, options, paint), own);
    results.forEach(sink::take);
    return sink.finish(desk);
  }
}

package clampwise.cli;

import clampwise.batch.Progress;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** One line on a terminal's standard error that says how far a run got; nothing elsewhere. */
final class ProgressLine {

  private static final double NANOS = 1e9;

  /** Shortest time between two drawings [ns]. */
  private static final long BETWEEN = 100_000_000L;

  /** Back to the start of the line, and nothing behind. */
  private static final String CLEAR = "\r\u001b[K";

  private final Console console;
  private final boolean shown;
  private final int total;
  private final long start = System.nanoTime();
  private int done;
  private long drawn = start;

  ProgressLine(Console console, boolean wanted, int total) {
    this.console = console;
    this.shown = wanted && total > 1 && console.screen().progress();
    this.total = total;
  }

  /** One more job is done, on whichever thread. */
  synchronized void step() {
    done++;
    long now = System.nanoTime();
    if (shown && now - drawn > BETWEEN) {
      drawn = now;
      write(CLEAR + new Progress(done, total, (now - start) / NANOS).text());
    }
  }

  /** Makes room for what is printed; the line comes back with a later step. */
  synchronized void clear() {
    if (shown && drawn != start) {
      write(CLEAR);
    }
  }

  private void write(String text) {
    try {
      console.err().write(text.getBytes(StandardCharsets.UTF_8));
      console.err().flush();
    } catch (IOException e) {
      // Nobody needs to know how far it got.
    }
  }
}

package clampwise.facts.clamps;

import clampwise.job.Attach;
import clampwise.job.Written;
import clampwise.source.Span;
import java.util.Optional;
import java.util.stream.Stream;

/** Where attachment schedules are written, and how. */
final class Schedules {

  private Schedules() {}

  /** The value that sets the schedule. */
  static Optional<Span> at(Attach attach) {
    return Stream.of(
            attach.perEdge().stream(),
            attach.every().stream(),
            attach.file().stream(),
            attach.zones().all().stream().map(item -> item.name()),
            attach.lines().all().stream().map(item -> item.name()),
            attach.points().stream().map(point -> point.at()))
        .flatMap(written -> written)
        .map(Written::at)
        .findFirst();
  }

  /** Whether the places are written one by one, rather than found by the program. */
  static boolean isWrittenOut(Attach attach) {
    return attach.file().isPresent() || !attach.lines().isEmpty() || !attach.points().isEmpty();
  }
}

package clampwise.job;

import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.Span;

/** Refuses a job with more modules than any roof carries, before anything is laid out. */
final class ModuleGuard {

  private static final long MOST = 1_000_000;

  private ModuleGuard() {}

  static boolean holds(Job job, Problems problems) {
    long total = 0;
    for (Named.Item<Field> field : job.fields().all()) {
      total += modules(field.value());
      if (total > MOST) {
        Span at = field.value().block().map(block -> block.rows().at()).orElse(field.name().at());
        String found = "more than " + MOST + " modules";
        problems.add(Problem.of(at, found, "at most " + MOST + " modules in a job"));
        return false;
      }
    }
    return true;
  }

  private static long modules(Field field) {
    long inBlock = field.block().map(b -> (long) b.rows().value() * b.columns().value()).orElse(0L);
    return inBlock
        + field.columns().stream().map(c -> (long) c.modules().value()).reduce(0L, Long::sum);
  }
}

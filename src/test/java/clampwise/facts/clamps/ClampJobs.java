package clampwise.facts.clamps;

import clampwise.facts.BaseJob;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import java.util.List;

/** Small jobs for tests of clamps; a row of modules whose first corner lies on a seam. */
final class ClampJobs {

  private ClampJobs() {}

  /** A row of modules in landscape; all lengths in millimetres. */
  record Row(double moduleMm, double pitchMm, String zone, double startMm, int modules) {

    static Row of(double moduleMm, double pitchMm, String zone) {
      return new Row(moduleMm, pitchMm, zone, 10 * pitchMm, 12);
    }

    Row startingAt(double mm) {
      return new Row(moduleMm, pitchMm, zone, mm, modules);
    }

    Facts facts() {
      return ClampJobs.facts(
          """
          job: a row over seams
          panels:
            sheet: {kind: standing-seam, pitch: %s mm}
          planes:
            roof: {panel: sheet, size: 60 m x 8 m, seams: {first: 0 mm}}
          modules:
            M:
              length: %s mm
              width: 1134 mm
              clamp-zones: [{side: long, zone: %s}]
          fields:
            A:
              plane: roof
              module: M
              orientation: landscape
              gap: 12 mm
              attach: {every: 1}
              block: {at: [%s mm, 1 m], rows: 1, columns: %d}
          """
              .formatted(pitchMm, moduleMm, zone, startMm, modules));
    }

    RowPhase phase() {
      return ClampJobs.of(RowPhase.class, facts()).get(0);
    }
  }

  static Facts facts(String text) {
    return BaseJob.ofText(text).facts();
  }

  static <T extends Fact> List<T> of(Class<T> type, Facts facts) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  static List<String> reasons(Class<? extends Fact> question, Facts facts) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == question)
        .map(Missing::reason)
        .toList();
  }
}

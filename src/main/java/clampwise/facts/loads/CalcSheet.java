package clampwise.facts.loads;

import clampwise.calc.trail.Section;
import clampwise.facts.Fact;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The calculation sheet of a job: of each field and wind zone the attachment, and the module, that
 * uses most of its strength; then the column of each field, and of the job the clip and the fixed
 * point, that do.
 *
 * @param facts facts of the job
 */
public record CalcSheet(List<Fact> facts) {

  /** The sheet of a job that could not be laid out. */
  public static final CalcSheet EMPTY = new CalcSheet(List.of());

  /**
   * The calculation of one attachment or module.
   *
   * @param field its field
   * @param zone wind zone it lies in
   * @param title what it is about
   * @param result the outcome in one sentence
   * @param sections from the given values to the outcome
   */
  public record Part(
      String field, String zone, String title, String result, List<Section> sections) {}

  private record Governing(String field, String zone, String title, double share, Fact fact) {

    Governing orWorse(Governing other) {
      return other.share > share ? other : this;
    }

    Part part() {
      String result = title + " uses " + String.format(java.util.Locale.ROOT, "%.3f", share);
      return new Part(field, zone, title, result, fact.chain().orElseThrow().sections());
    }
  }

  /** The parts, by field and zone in the order of the job. */
  public List<Part> parts() {
    Map<List<String>, Governing> worst = new LinkedHashMap<>();
    for (Fact fact : facts) {
      if (fact instanceof AttachmentUse use) {
        add(worst, "attachment", of(use));
      } else if (fact instanceof ModuleUse use) {
        add(worst, "module", of(use));
      } else {
        path(fact).ifPresent(use -> add(worst, use.kind, use.governing));
      }
    }
    List<Part> parts = new ArrayList<>();
    worst.values().forEach(governing -> parts.add(governing.part()));
    return parts;
  }

  private record PathUse(String kind, Governing governing) {}

  /** What carries the loads on below the attachments: one part of a kind and field. */
  private static Optional<PathUse> path(Fact fact) {
    if (fact instanceof ClipUse use) {
      String title = "clip of " + use.covering() + " on " + use.seam();
      return Optional.of(new PathUse("clip", of(title, "", use.forceN() / use.strengthN(), use)));
    }
    if (fact instanceof ColumnSlip use) {
      String title = "column " + use.column() + " along its seams";
      return Optional.of(new PathUse("column", of(title, use.field(), use.utilisation(), use)));
    }
    if (fact instanceof FixedPointForce use) {
      String title = "fixed point of " + use.covering() + ", " + use.panel();
      return Optional.of(
          new PathUse("fixed point", of(title, "", use.forceN() / use.strengthN(), use)));
    }
    return Optional.empty();
  }

  private static Governing of(String title, String field, double share, Fact fact) {
    return new Governing(field, "", title, share, fact);
  }

  private static void add(Map<List<String>, Governing> worst, String kind, Governing governing) {
    worst.merge(List.of(governing.field, governing.zone, kind), governing, Governing::orWorse);
  }

  private static Governing of(AttachmentUse use) {
    String title = use.attachment() + " on " + use.part() + ", " + use.pull();
    return new Governing(use.field(), use.zone(), title, use.utilisation(), use);
  }

  private static Governing of(ModuleUse use) {
    String title = use.module() + ", " + use.type() + ", " + use.direction();
    double share = use.demandPa() / use.ratedPa();
    return new Governing(use.field(), use.zone(), title, share, use);
  }
}

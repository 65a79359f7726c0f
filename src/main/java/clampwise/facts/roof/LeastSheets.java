package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.catalogue.SheetThickness;
import clampwise.job.Choice;
import clampwise.job.Metal;
import clampwise.job.Tested;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the thinnest sheet a part may hold to on a covering. */
final class LeastSheets {

  /** Half of the last digit that gauge tables and data sheets print in millimetres. */
  private static final double SAME_M = 5e-6;

  private LeastSheets() {}

  /**
   * A thinnest sheet and what it rests on.
   *
   * @param from in words
   */
  record Least(double leastM, String from, Optional<Limit> limit) {

    /** A thickness [m], made equal to this one where both are one sheet written in two ways. */
    double levelled(double thicknessM) {
      return Math.abs(thicknessM - leastM) <= SAME_M ? leastM : thicknessM;
    }
  }

  /** The governing one of part sheet and tests; else the limit of practice for the metal. */
  static Optional<Least> of(PartUse use, Metal metal, Limits limits) {
    return Stream.concat(stated(use, metal).stream(), tested(use, metal).stream())
        .max(Comparator.comparingDouble(Least::leastM))
        .or(() -> ofPractice(metal, limits));
  }

  private static Optional<Least> stated(PartUse use, Metal metal) {
    return use.part()
        .thicknessAtLeast()
        .flatMap(written -> SheetThickness.baseM(written, metal))
        .map(leastM -> new Least(leastM, "its data sheet", Optional.empty()));
  }

  /** The thinnest sheet among the tests on this profile, metal and substrate. */
  private static Optional<Least> tested(PartUse use, Metal metal) {
    return onSubstrate(use).stream()
        .flatMap(row -> row.thickness().stream())
        .flatMap(written -> SheetThickness.baseM(written, metal).stream())
        .min(Comparator.naturalOrder())
        .map(
            leastM -> new Least(leastM, "its tests on this metal and substrate", Optional.empty()));
  }

  private static List<Tested> onSubstrate(PartUse use) {
    List<Tested> tests = use.testsThatApply();
    List<Tested> same = tests.stream().filter(row -> isOnSubstrate(use, row)).toList();
    return same.isEmpty() ? tests : same;
  }

  private static boolean isOnSubstrate(PartUse use, Tested row) {
    return row.substrates().isEmpty()
        || use.panel().substrate().stream()
            .anyMatch(
                s -> row.substrates().stream().map(Choice::value).anyMatch(s.value()::equals));
  }

  private static Optional<Least> ofPractice(Metal metal, Limits limits) {
    return switch (metal) {
      case STEEL -> Optional.of(least(limits.get("steel-thickness-least")));
      case ALUMINIUM -> Optional.of(least(limits.get("aluminium-thickness-least")));
      case COPPER, ZINC, STAINLESS_STEEL -> Optional.empty();
    };
  }

  private static Least least(Limit limit) {
    return new Least(limit.si(), "practice for this metal", Optional.of(limit));
  }
}

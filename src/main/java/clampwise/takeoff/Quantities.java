package clampwise.takeoff;

import clampwise.calc.takeoff.WholeNumbers;
import clampwise.catalogue.Limits;
import clampwise.facts.layout.Layout;
import clampwise.facts.roof.Shown;
import clampwise.job.Quantity.Factor;
import clampwise.job.Takeoff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a layout takes.
 *
 * @param lines parts, by kind and name
 * @param spares share of spares that was added
 * @param runs conductors by length
 * @param freight what has to be brought to the roof, if all modules could be counted
 * @param crew time of the crew, likewise
 * @param comparison the same modules on rails, likewise
 * @param notCounted what is missing above
 * @param imperial whether the designer thinks in feet and pounds
 */
public record Quantities(
    List<PartLine> lines,
    double spares,
    List<Run> runs,
    Optional<Freight> freight,
    Optional<Crew> crew,
    Optional<Comparison> comparison,
    List<NotCounted> notCounted,
    boolean imperial) {

  private static final String NOT_ALL = "not all modules and attachments are counted";

  /**
   * The take-off of a layout.
   *
   * @param limits of codes and practice
   * @param asked share of spares that goes before the one of the job
   */
  public static Quantities of(Layout layout, Limits limits, Optional<Double> asked) {
    Limits rules = layout.catalogue().codes().takeoff();
    Optional<Takeoff> given = layout.job().takeoff();
    double share = asked.orElseGet(() -> share(given, rules));
    Counts counts = Counts.of(layout);
    List<PartLine> lines = lines(counts, share, PartMasses.of(layout));
    Runs runs = Runs.of(layout);
    boolean complete =
        counts.hasModules() && counts.notCounted().stream().noneMatch(NotCounted::isOfModules);
    Optional<Counts> known = Optional.of(counts).filter(all -> complete);
    return new Quantities(
        lines,
        share,
        runs.known(),
        known.map(all -> freight(all, lines, given, rules)),
        known.map(all -> Crew.of(all, rules)),
        known.map(all -> Comparison.of(layout, all, rules, limits)),
        missing(counts, runs, lines, complete),
        layout.planes().stream().findFirst().map(Shown::isImperial).orElse(false));
  }

  private static double share(Optional<Takeoff> given, Limits rules) {
    return given
        .flatMap(Takeoff::spares)
        .map(Factor::value)
        .orElseGet(() -> rules.get("spares-usual").si());
  }

  private static List<NotCounted> missing(
      Counts counts, Runs runs, List<PartLine> lines, boolean complete) {
    List<NotCounted> missing = new ArrayList<>(counts.notCounted());
    if (!counts.hasModules() && missing.stream().noneMatch(NotCounted::isOfModules)) {
      missing.add(0, new NotCounted("modules", "the job lays out none: give fields"));
    }
    missing.addAll(runs.unknown());
    missing.addAll(weightless(lines));
    if (!complete) {
      missing.add(new NotCounted("freight, crew time, comparison with rails", NOT_ALL));
    }
    return List.copyOf(missing);
  }

  /** Jumpers and lugs belong to the hardware; clips weigh nothing beside it. */
  private static Freight freight(
      Counts counts, List<PartLine> lines, Optional<Takeoff> given, Limits rules) {
    Freight.Packing packing = Freight.Packing.of(given.flatMap(Takeoff::modulesPerPallet), rules);
    Freight freight = Freight.of(lines, packing, rules);
    return counts.unknown(PartKind.JUMPER).isPresent() ? freight.withoutHardware() : freight;
  }

  /** Modules are ordered as drawn: whether to keep spare ones is for the owner to say. */
  private static List<PartLine> lines(Counts counts, double share, PartMasses masses) {
    List<PartLine> lines = new ArrayList<>();
    counts
        .parts()
        .forEach(
            (part, count) -> {
              int spares = part.kind() == PartKind.MODULE ? 0 : WholeNumbers.spares(count, share);
              lines.add(new PartLine(part, count, spares, masses.eachKg(part)));
            });
    return List.copyOf(lines);
  }

  private static List<NotCounted> weightless(List<PartLine> lines) {
    return lines.stream()
        .filter(line -> line.eachKg().isEmpty())
        .map(line -> new NotCounted("the mass of " + line.part(), "it is not given"))
        .toList();
  }
}

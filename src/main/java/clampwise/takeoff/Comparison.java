package clampwise.takeoff;

import clampwise.catalogue.Limit;
import clampwise.catalogue.Limits;
import clampwise.facts.layout.Layout;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The modules as drawn, and on rails laid by stated rules.
 *
 * @param assumed what was assumed of rails
 */
public record Comparison(Side drawn, Side railed, List<Limit> assumed) {

  static Comparison of(Layout layout, Counts counts, Limits rules, Limits limits) {
    Railed railed = RailPlan.of(layout, rules, limits);
    List<Limit> assumed =
        rules.byKey().values().stream().filter(each -> each.key().startsWith("rail")).toList();
    return new Comparison(
        drawn(layout, counts, rules), railed(layout, railed, counts, rules), assumed);
  }

  private static Side drawn(Layout layout, Counts counts, Limits rules) {
    PartMasses masses = PartMasses.of(layout);
    Optional<Double> hardwareKg =
        sum(counts.parts().entrySet().stream()
                .filter(entry -> holds(entry.getKey().kind()))
                .map(entry -> times(entry.getValue(), masses.eachKg(entry.getKey()))))
            .filter(kg -> counts.unknown(PartKind.JUMPER).isEmpty());
    return new Side(
        counts.attachments(),
        counts.of(PartKind.MID_CLAMP),
        counts.of(PartKind.END_CLAMP),
        0,
        0,
        0,
        counts.of(PartKind.JUMPER),
        counts.of(PartKind.LUG),
        hardwareKg,
        Crew.of(counts, rules).seconds());
  }

  /** Cables and their clips are the same on both sides. */
  private static boolean holds(PartKind kind) {
    return kind != PartKind.MODULE && kind != PartKind.WIRE_CLIP;
  }

  private static Side railed(Layout layout, Railed railed, Counts counts, Limits rules) {
    return new Side(
        railed.attachments(),
        railed.midClamps(),
        railed.endClamps(),
        railed.railM(),
        railed.pieces(),
        railed.splices(),
        0,
        railed.lugs(),
        hardwareKg(railed, counts, PartMasses.of(layout), rules),
        Crew.railed(railed, counts, rules).seconds());
  }

  private static Optional<Double> hardwareKg(
      Railed railed, Counts counts, PartMasses masses, Limits rules) {
    double railsKg =
        railed.railM() * rules.get("rail-mass-of-a-metre").si()
            + railed.splices() * rules.get("rail-splice-mass").si()
            + railed.attachments() * rules.get("rail-foot-mass").si()
            + (railed.midClamps() + railed.endClamps()) * rules.get("rail-clamp-mass").si();
    Stream<Optional<Double>> attachments =
        railed.runs().stream()
            .map(each -> times(each.run().attachments(), masses.eachKg(each.attachment())));
    Stream<Optional<Double>> lugs = Stream.of(times(railed.lugs(), lugKg(counts, masses)));
    return sum(Stream.of(Stream.of(Optional.of(railsKg)), attachments, lugs).flatMap(each -> each));
  }

  /** Rails take the lug that the drawing has. */
  private static Optional<Double> lugKg(Counts counts, PartMasses masses) {
    return counts.parts().keySet().stream()
        .filter(part -> part.kind() == PartKind.LUG)
        .findFirst()
        .flatMap(masses::eachKg);
  }

  private static Optional<Double> times(int count, Optional<Double> eachKg) {
    return eachKg.map(kg -> count * kg);
  }

  private static Optional<Double> sum(Stream<Optional<Double>> masses) {
    List<Optional<Double>> all = masses.toList();
    return all.stream().allMatch(Optional::isPresent)
        ? Optional.of(all.stream().mapToDouble(Optional::orElseThrow).sum())
        : Optional.empty();
  }
}

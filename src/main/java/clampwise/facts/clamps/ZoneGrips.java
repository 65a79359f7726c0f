package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.HeldModule.Hold;
import clampwise.facts.layout.Grip.Edge;
import clampwise.facts.layout.Grip.Half;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.SeamLine;
import clampwise.job.LengthRange;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Asks of each module whether each half of its edges has a clamp in the clamp zone.
 *
 * <p>Of the clamps on one half the best placed counts: more clamps beside it do no harm. Modules
 * that no seam lets clamp in the zone are left to {@link RowPhase}, clamps beside a seam to the
 * question whether attachments sit on seams.
 */
final class ZoneGrips {

  private final FieldCase asked;
  private final ZoneSeams seams;
  private final Set<String> told = new HashSet<>();

  ZoneGrips(FieldCase asked) {
    this.asked = asked;
    this.seams = ZoneSeams.of(asked);
  }

  void judge(HeldModule held) {
    UsableZones zones = seams.zones(held.module());
    Optional<String> unusable = seams.unusable(held.module());
    if (unusable.isPresent()) {
      tell(held.module(), unusable.get());
    } else if (!seams.areKnown() || seams.allow(held.module())) {
      worst(held, zones).map(hold -> fact(hold, zones)).ifPresent(asked::add);
    }
  }

  private Optional<Hold> worst(HeldModule held, UsableZones zones) {
    Comparator<Hold> byMiss =
        Comparator.comparingDouble(hold -> zones.missM(hold.grip().fromCornerM()));
    return Stream.of(Edge.values())
        .flatMap(edge -> Stream.of(Half.values()).map(half -> held.on(edge, half)))
        .flatMap(holds -> holds.stream().filter(this::isOnSeam).min(byMiss).stream())
        .max(byMiss);
  }

  /** A clamp beside its seam has to move anyway, and says so itself. */
  private boolean isOnSeam(Hold hold) {
    Optional<SeamLine> seam = hold.attachment().seam();
    boolean surveyed = seam.filter(SeamLine::surveyed).isPresent();
    String limit = surveyed ? "attachment-off-seam-surveyed" : "attachment-off-seam-drawn";
    return seam.isEmpty() || hold.attachment().offsetM() <= asked.limits().get(limit).si();
  }

  private ZoneGrip fact(Hold hold, UsableZones zones) {
    double fromCornerM = hold.grip().fromCornerM();
    LengthRange zone = zones.nearest(fromCornerM).zone();
    PlacedModule module = hold.grip().module();
    double minM = Snap.m(zone.min().m());
    double maxM = Snap.m(zone.max().m());
    return new ZoneGrip(
        Subjects.module(module),
        ModuleHolds.cause(asked),
        hold.attachment().at(),
        zone.min().unit(),
        module.name(),
        ModuleHolds.word(hold.grip().edge()),
        hold.attachment().name(),
        fromCornerM,
        minM,
        maxM,
        fromCornerM - minM < maxM - fromCornerM ? minM : maxM,
        seams.better(hold.grip()));
  }

  private void tell(PlacedModule module, String reason) {
    if (told.add(reason)) {
      asked.missing(
          ZoneGrip.class,
          asked.subject().part("module type " + module.typeName()),
          reason,
          asked.field().field().module().at());
    }
  }
}

package clampwise.facts.clamps;

import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.Subjects;
import clampwise.facts.clamps.HeldModule.Hold;
import clampwise.facts.layout.Grip.Edge;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.ModuleType;
import clampwise.job.Quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Asks how far modules reach past the outermost clamps, where the clamp zone does not already say
 * so.
 */
final class Overhangs {

  private final FieldCase asked;
  private final Limit practice;

  Overhangs(FieldCase asked) {
    this.asked = asked;
    this.practice = asked.limits().get("overhang-share-of-span-most");
  }

  /** The end of an edge past its outermost clamp. */
  private record End(Hold outermost, double overhangM, double spanM) {}

  void judge(HeldModule held) {
    if (!isBoundByZone(held.module())) {
      Stream.of(Edge.values())
          .filter(edge -> held.halvesHeld(edge) == 2)
          .flatMap(edge -> ends(held.on(edge), held.module()))
          .map(this::fact)
          .max(Comparator.comparingDouble(fact -> fact.overhangM() - fact.mostM()))
          .ifPresent(asked::add);
    }
  }

  /** A clamp in its zone cannot leave a longer overhang than the zone's far end. */
  private static boolean isBoundByZone(PlacedModule module) {
    ModuleType type = module.type();
    Optional<Double> farEndM =
        UsableZones.ofSide(module).stream()
            .map(row -> row.zone().max().m())
            .max(Comparator.naturalOrder());
    return farEndM.isPresent()
        && type.overhangAtMost().filter(most -> most.m() < farEndM.get()).isEmpty();
  }

  private static Stream<End> ends(List<Hold> holds, PlacedModule module) {
    Hold first = holds.get(0);
    Hold last = holds.get(holds.size() - 1);
    double leftSpanM = holds.get(1).grip().fromLeftM() - first.grip().fromLeftM();
    double rightSpanM = last.grip().fromLeftM() - holds.get(holds.size() - 2).grip().fromLeftM();
    return Stream.of(
        new End(first, first.grip().fromLeftM(), Snap.m(leftSpanM)),
        new End(last, Snap.m(module.alongM() - last.grip().fromLeftM()), Snap.m(rightSpanM)));
  }

  private Overhang fact(End end) {
    PlacedModule module = end.outermost.grip().module();
    Optional<Length> stated = module.type().overhangAtMost();
    return new Overhang(
        Subjects.module(module),
        ModuleHolds.cause(asked),
        end.outermost.attachment().at(),
        stated.orElse(module.type().length()).unit(),
        module.name(),
        ModuleHolds.word(end.outermost.grip().edge()),
        end.overhangM,
        Snap.m(stated.map(Length::m).orElse(practice.si() * end.spanM)),
        end.spanM,
        stated.isPresent() ? Optional.empty() : Optional.of(practice));
  }
}

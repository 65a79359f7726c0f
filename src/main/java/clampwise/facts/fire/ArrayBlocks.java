package clampwise.facts.fire;

import clampwise.calc.Outcome;
import clampwise.calc.Snap;
import clampwise.catalogue.Limit;
import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import clampwise.facts.roof.Shown;
import clampwise.finding.Subject;
import java.util.List;
import java.util.Optional;

/** Measures array sections from path to path, on each plane for itself. */
final class ArrayBlocks {

  private final Access access;
  private final Outcome<Coverage> coverage;
  private final Limit most;
  private final double aisleM;

  ArrayBlocks(Access access, Outcome<Coverage> coverage, Limit most, double aisleM) {
    this.access = access;
    this.coverage = coverage;
    this.most = most;
    this.aisleM = aisleM;
  }

  void ask(PlaneLayout plane, Sections sections) {
    for (List<PlacedModule> block : sections.all()) {
      for (Axis axis : Axis.values()) {
        access.add(fact(plane, block, axis));
      }
    }
  }

  private ArrayBlock fact(PlaneLayout plane, List<PlacedModule> block, Axis axis) {
    double startM = block.stream().mapToDouble(axis::startM).min().orElseThrow();
    double endM = block.stream().mapToDouble(axis::endM).max().orElseThrow();
    double extentM = Snap.m(endM - startM);
    double mostM = Snap.m(most.si());
    Subject subject = Access.subject("array sections").part(block.get(0).name()).part(axis.words());
    return new ArrayBlock(
        subject,
        subject,
        block.get(0).at(),
        Shown.of(plane),
        plane.name(),
        block.get(0).name() + " to " + block.get(block.size() - 1).name(),
        axis.words(),
        extentM,
        mostM,
        aisleM,
        extentM > mostM ? cure(new Aisle(plane, block, axis), startM, endM) : "",
        Optional.of(most));
  }

  private record Aisle(PlaneLayout plane, List<PlacedModule> block, Axis axis) {}

  /** The first path of those it takes: as far in as the section may reach, where it costs least. */
  private String cure(Aisle aisle, double startM, double endM) {
    double mostM = most.si();
    int paths = (int) Math.ceil((endM - startM + aisleM) / (mostM + aisleM) - 1e-9) - 1;
    double lowM = Math.max(startM, endM - paths * (mostM + aisleM));
    List<PlacedModule> drop =
        new Clearing(aisle.block(), aisle.axis(), aisleM).fewest(lowM, startM + mostM);
    String words = new Dropped(aisle.plane(), drop).words(coverage);
    return paths == 1 ? words : words + ", and " + (paths - 1) + " more such paths";
  }
}

package clampwise.facts.bonding;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.Layout;
import clampwise.job.Bonding;
import clampwise.source.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What the ground paths of a layout lack.
 *
 * @param jumpers for each jumper, where it would be written
 * @param lugs for each field without ground, where its lug would be written
 */
public record Lacking(List<Span> jumpers, List<Span> lugs) {

  /** What the ground paths of a layout with bonding lack. */
  public static Lacking of(Layout layout, Bonding bonding) {
    BondGraph graph = BondGraph.of(layout, bonding);
    List<Island> islands = graph.islands();
    Healing healing = new Healing(graph.frames(), islands);
    BondingPlaces places = new BondingPlaces(bonding);
    Lacking lacking = new Lacking(new ArrayList<>(), new ArrayList<>());
    Set<String> grounded = new HashSet<>();
    for (Island island : islands) {
      if (island.isGrounded()) {
        grounded.addAll(island.fields());
      }
      FieldLayout field = graph.frames().field(island.first().field()).orElseThrow();
      healing.jumper(island).ifPresent(tie -> lacking.jumpers.add(places.jumpers(field)));
    }
    for (FieldLayout field : layout.fields()) {
      if (!grounded.contains(field.name())) {
        lacking.lugs.add(places.lugs(field));
      }
    }
    return lacking;
  }

  /** Where jumpers or lugs are lacking, if as many are as the drawing counts too many. */
  List<Span> at(String what, int over) {
    List<Span> all = what.equals("lugs") ? lugs : jumpers;
    return all.size() == over ? all : List.of();
  }
}

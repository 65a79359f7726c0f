package clampwise.facts.fire;

import clampwise.facts.layout.PlacedModule;
import clampwise.facts.layout.PlaneLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Array sections of a plane: modules that no path of full width divides. */
final class Sections {

  private static final double TOUCH_M = 1e-6;

  private final List<PlacedModule> modules;
  private final STRtree near = new STRtree();
  private final int[] section;

  /** Two modules of different sections, and how far they are apart. */
  record Between(PlacedModule one, PlacedModule other, double apartM) {}

  private Sections(List<PlacedModule> modules) {
    this.modules = modules;
    this.section = IntStream.range(0, modules.size()).toArray();
    IntStream.range(0, modules.size()).forEach(i -> near.insert(Blocker.box(modules.get(i)), i));
    near.build();
  }

  /** Sections divided by paths of a width. */
  static Sections of(PlaneLayout plane, double pathM) {
    Sections sections = new Sections(Access.modules(plane));
    for (int i = 0; i < sections.modules.size(); i++) {
      for (int other : sections.within(i, pathM - TOUCH_M)) {
        sections.join(i, other);
      }
    }
    return sections;
  }

  private List<Integer> within(int module, double reachM) {
    Envelope box = Blocker.box(modules.get(module));
    Envelope reach = new Envelope(box);
    reach.expandBy(reachM);
    List<Integer> found = new ArrayList<>();
    for (Object other : near.query(reach)) {
      int index = (Integer) other;
      if (index > module && box.distance(Blocker.box(modules.get(index))) < reachM) {
        found.add(index);
      }
    }
    return found;
  }

  private void join(int one, int other) {
    section[root(other)] = root(one);
  }

  private int root(int module) {
    int at = module;
    while (section[at] != at) {
      section[at] = section[section[at]];
      at = section[at];
    }
    return at;
  }

  /** The modules of each section, in the order of the layout. */
  List<List<PlacedModule>> all() {
    Map<Integer, List<PlacedModule>> all = new LinkedHashMap<>();
    for (int i = 0; i < modules.size(); i++) {
      all.computeIfAbsent(root(i), key -> new ArrayList<>()).add(modules.get(i));
    }
    return List.copyOf(all.values());
  }

  /** The narrowest place between each two sections that are no farther apart than a reach. */
  List<Between> nearest(double reachM) {
    Map<Long, Between> nearest = new TreeMap<>();
    for (int i = 0; i < modules.size(); i++) {
      for (int other : within(i, reachM + TOUCH_M)) {
        if (root(i) != root(other)) {
          nearest.merge(key(root(i), root(other)), between(i, other), Sections::nearer);
        }
      }
    }
    return List.copyOf(nearest.values());
  }

  private static long key(int one, int other) {
    return (long) Math.min(one, other) << Integer.SIZE | Math.max(one, other);
  }

  private Between between(int one, int other) {
    double apartM = Blocker.box(modules.get(one)).distance(Blocker.box(modules.get(other)));
    return new Between(modules.get(one), modules.get(other), apartM);
  }

  private static Between nearer(Between one, Between other) {
    return other.apartM() < one.apartM() ? other : one;
  }
}

package clampwise.facts.bonding;

import clampwise.facts.layout.Layout;
import clampwise.facts.layout.PlacedModule;
import clampwise.job.Bonding;
import clampwise.job.Bonding.Jumper;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jgrapht.alg.util.UnionFind;

/**
 * The frames of a layout with all that joins them to each other and to ground.
 *
 * <p>Parts that are said not to bond count as joints here: they are a finding of their own, and the
 * islands they leave would repeat it. A jumper that does not reach from one frame to the other is
 * no joint.
 */
final class BondGraph {

  private final Frames frames;
  private final List<Joint> joints;
  private final List<Joint> ties;
  private final List<Grounding> lugs;
  private final List<ShortTie> shorts;

  private BondGraph(Frames frames, List<Joint> clamped, Ties tied, List<Grounding> lugs) {
    this.frames = frames;
    this.joints = Stream.concat(clamped.stream(), tied.joints().stream()).toList();
    this.ties = tied.joints();
    this.lugs = lugs;
    this.shorts = tied.shorts();
  }

  /** Jumpers that reach, and those that do not. */
  private record Ties(List<Joint> joints, List<ShortTie> shorts) {

    static Ties of(Bonding bonding, Joints found, BondParts parts, Reach reach) {
      Ties ties = new Ties(new ArrayList<>(), new ArrayList<>());
      for (Jumper jumper : bonding.jumpers()) {
        for (Joint joint : found.tied(jumper).toList()) {
          if (reach.isShort(jumper, joint)) {
            ties.shorts.add(new ShortTie(joint, parts.placeOf(jumper)));
          } else {
            ties.joints.add(joint);
          }
        }
      }
      return ties;
    }
  }

  static BondGraph of(Layout layout, Bonding bonding) {
    BondParts parts = BondParts.of(layout, bonding);
    Frames frames = new Frames(layout, parts.jumperLengthM());
    Joints found = new Joints(frames, parts);
    Stream<Joint> clamped = layout.fields().stream().flatMap(found::clamped);
    Ties tied = Ties.of(bonding, found, parts, new Reach(layout, parts));
    List<Grounding> lugs =
        bonding.lugs().stream()
            .flatMap(
                lug ->
                    frames.find(lug.on().value()).stream()
                        .map(frame -> new Grounding(frame, parts.lug(lug).doubt())))
            .toList();
    return new BondGraph(frames, clamped.toList(), tied, lugs);
  }

  Frames frames() {
    return frames;
  }

  List<Joint> joints() {
    return joints;
  }

  /** Those of the joints that are jumpers. */
  List<Joint> ties() {
    return ties;
  }

  List<Grounding> lugs() {
    return lugs;
  }

  /** Jumpers that do not reach. */
  List<ShortTie> shorts() {
    return shorts;
  }

  /** The same with all jumpers of whatever length. */
  BondGraph withShorts() {
    Ties all = new Ties(shorts.stream().map(ShortTie::joint).toList(), List.of());
    return new BondGraph(frames, joints, all, lugs);
  }

  /** The same with further jumpers and lugs, which bond. */
  BondGraph with(List<Tie> jumpers, List<PlacedModule> more) {
    Stream<Joint> tied =
        jumpers.stream().map(tie -> new Joint(tie.one(), tie.other(), Optional.empty()));
    Stream<Grounding> grounded = more.stream().map(frame -> new Grounding(frame, Optional.empty()));
    return new BondGraph(
        frames,
        joints.subList(0, joints.size() - ties.size()),
        new Ties(Stream.concat(ties.stream(), tied).toList(), shorts),
        Stream.concat(lugs.stream(), grounded).toList());
  }

  /** Whether it is not known of some joint or lug that it bonds. */
  boolean isInDoubt() {
    return joints.stream().anyMatch(joint -> joint.doubt().isPresent())
        || lugs.stream().anyMatch(lug -> lug.doubt().isPresent());
  }

  /** Jumpers that are drawn, each counted once. */
  static int jumpers(Layout layout, Bonding bonding) {
    Joints found = new Joints(new Frames(layout), BondParts.of(layout, bonding));
    return (int) bonding.jumpers().stream().flatMap(found::tied).count();
  }

  /** The islands, in the order of their first frames. */
  List<Island> islands() {
    UnionFind<String> all = joined(joints);
    Set<String> sure = sure();
    Map<String, Integer> lugsOf = new HashMap<>();
    lugs.forEach(lug -> lugsOf.merge(all.find(lug.frame().name()), 1, Integer::sum));
    Map<String, Set<String>> doubtsOf = doubts(all);
    Map<String, List<PlacedModule>> framesOf = new LinkedHashMap<>();
    for (PlacedModule frame : frames.all()) {
      framesOf.computeIfAbsent(all.find(frame.name()), root -> new ArrayList<>()).add(frame);
    }
    return framesOf.entrySet().stream()
        .map(
            entry ->
                new Island(
                    List.copyOf(entry.getValue()),
                    lugsOf.getOrDefault(entry.getKey(), 0),
                    within(entry.getValue(), sure),
                    doubtsOf.getOrDefault(entry.getKey(), Set.of())))
        .toList();
  }

  /** The clusters of frames, in the order of the layout. */
  List<BondCluster> clusters() {
    UnionFind<String> sets = joined(joints);
    List<PlacedModule> sorted = frames.byColumn();
    for (PlacedModule frame : sorted) {
      frames.beside(frame).forEach(other -> sets.union(frame.name(), other.name()));
    }
    Map<String, BondCluster> found = new LinkedHashMap<>();
    for (PlacedModule frame : sorted) {
      cluster(found, sets.find(frame.name())).frames().add(frame);
    }
    for (Joint joint : joints) {
      cluster(found, sets.find(joint.one().name())).joints().add(joint);
    }
    for (Grounding lug : lugs) {
      cluster(found, sets.find(lug.frame().name())).lugs().add(lug);
    }
    return List.copyOf(found.values());
  }

  private static BondCluster cluster(Map<String, BondCluster> found, String root) {
    return found.computeIfAbsent(root, unseen -> new BondCluster());
  }

  private static Set<String> within(List<PlacedModule> island, Set<String> sure) {
    return island.stream()
        .map(PlacedModule::name)
        .filter(sure::contains)
        .collect(Collectors.toSet());
  }

  private UnionFind<String> joined(List<Joint> by) {
    Set<String> names =
        frames.all().stream()
            .map(PlacedModule::name)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    UnionFind<String> sets = new UnionFind<>(names);
    by.forEach(joint -> sets.union(joint.one().name(), joint.other().name()));
    return sets;
  }

  /** Frames that are bonded to a lug if nothing that is in doubt bonds. */
  private Set<String> sure() {
    UnionFind<String> sets =
        joined(joints.stream().filter(joint -> joint.doubt().isEmpty()).toList());
    Set<String> grounded =
        lugs.stream()
            .filter(lug -> lug.doubt().isEmpty())
            .map(lug -> sets.find(lug.frame().name()))
            .collect(Collectors.toSet());
    return frames.all().stream()
        .map(PlacedModule::name)
        .filter(name -> grounded.contains(sets.find(name)))
        .collect(Collectors.toSet());
  }

  private Map<String, Set<String>> doubts(UnionFind<String> sets) {
    Map<String, Set<String>> found = new HashMap<>();
    joints.forEach(joint -> note(found, sets.find(joint.one().name()), joint.doubt()));
    lugs.forEach(lug -> note(found, sets.find(lug.frame().name()), lug.doubt()));
    return found;
  }

  private static void note(Map<String, Set<String>> found, String root, Optional<String> doubt) {
    doubt.ifPresent(
        reason -> found.computeIfAbsent(root, key -> new LinkedHashSet<>()).add(reason));
  }
}

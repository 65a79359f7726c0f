package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;

/**
 * The jumpers and lugs to add so that no frame hangs on a single other one, cluster by cluster of
 * frames that jumpers could tie.
 *
 * <p>Each smallest group that hangs on one frame needs one end of an added part, and a jumper has
 * two: half as many parts as there are such groups would do at best. Groups are tied pair by pair
 * where a jumper reaches, until none is left. Where that takes more than the fewest that could do,
 * a search looks for fewer.
 */
final class Closing {

  /** After so many rounds lugs end it; each round halves what is left on any usual layout. */
  private static final int ROUNDS = 25;

  /** Frames and joints that may be walked over on leaving out what is not needed after all. */
  private static final long STEPS = 2_000_000;

  /** The same for each number of parts that is tried. */
  private static final long SEARCH_STEPS = 400_000;

  private final List<Tie> jumpers = new ArrayList<>();
  private final List<PlacedModule> lugs = new ArrayList<>();

  private Closing() {}

  static Closing of(BondGraph graph) {
    Closing closing = new Closing();
    for (BondCluster cluster : graph.clusters()) {
      Net net = Net.of(cluster);
      if (hangs(net.walk())) {
        closing.close(net, net.beside(graph.frames()));
      }
    }
    return closing;
  }

  private void close(Net net, int[][] beside) {
    List<int[]> inRounds = leaveOut(net, rounds(net, beside));
    inRounds.forEach(net::part);
    for (int[] pair : new ClosingSearch(net, beside, SEARCH_STEPS).fewerThan(inRounds)) {
      if (pair[1] == net.ground()) {
        lugs.add(net.frame(pair[0]));
      } else {
        jumpers.add(Tie.of(net.frame(pair[0]), net.frame(pair[1])));
      }
    }
  }

  private static List<int[]> rounds(Net net, int[][] beside) {
    List<int[]> added = new ArrayList<>();
    ClosingRound round = new ClosingRound(net, beside);
    for (int i = 1; round.isOpen(); i++) {
      round.close(i >= ROUNDS);
      added.addAll(round.added());
      round = new ClosingRound(net, beside);
    }
    return added;
  }

  private static List<int[]> leaveOut(Net net, List<int[]> added) {
    List<int[]> needed = new ArrayList<>(added);
    if ((long) added.size() * net.size() > STEPS) {
      return needed;
    }
    for (int[] pair : added) {
      net.part(pair);
      if (hangs(net.walk())) {
        net.join(pair);
      } else {
        needed.remove(pair);
      }
    }
    return needed;
  }

  private static boolean hangs(Walk walk) {
    for (int frame : walk.reached()) {
      if (walk.hangs(frame)) {
        return true;
      }
    }
    return false;
  }

  List<Tie> jumpers() {
    return jumpers;
  }

  List<PlacedModule> lugs() {
    return lugs;
  }
}

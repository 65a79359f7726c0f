package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.List;

/**
 * The jumpers and lugs to add so that no frame hangs on a single other one.
 *
 * <p>Each smallest group that hangs on one frame needs one end of an added part, and a jumper has
 * two: half as many parts as there are such groups would do at best. Groups are tied pair by pair
 * where a jumper reaches, until none is left. Which pairs to choose is a hard question in general;
 * on columns in a row the answer is the smallest, as a test finds by trying all others.
 */
final class Closing {

  /** After so many rounds lugs end it; each round halves what is left on any usual layout. */
  private static final int ROUNDS = 25;

  /** Walks over frames that may be spent on leaving out what is not needed after all. */
  private static final long STEPS = 2_000_000;

  private final Net net;
  private final List<int[]> added = new ArrayList<>();

  private Closing(Net net) {
    this.net = net;
  }

  static Closing of(BondGraph graph) {
    Closing closing = new Closing(Net.of(graph, false));
    ClosingRound round = closing.round(graph);
    for (int i = 1; round.isOpen(); i++) {
      round.close(i >= ROUNDS);
      closing.added.addAll(round.added());
      round = closing.round(graph);
    }
    closing.leaveOut();
    return closing;
  }

  private ClosingRound round(BondGraph graph) {
    return new ClosingRound(net, graph.frames());
  }

  private void leaveOut() {
    if ((long) added.size() * net.ground() > STEPS) {
      return;
    }
    for (int[] pair : List.copyOf(added)) {
      net.part(pair);
      if (hangs(net.walk())) {
        net.join(pair);
      } else {
        added.remove(pair);
      }
    }
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
    return added.stream()
        .filter(pair -> pair[1] != net.ground())
        .map(pair -> Tie.of(net.frame(pair[0]), net.frame(pair[1])))
        .toList();
  }

  List<PlacedModule> lugs() {
    return added.stream()
        .filter(pair -> pair[1] == net.ground())
        .map(pair -> net.frame(pair[0]))
        .toList();
  }
}

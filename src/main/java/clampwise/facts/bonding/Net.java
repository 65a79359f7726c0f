package clampwise.facts.bonding;

import clampwise.facts.layout.PlacedModule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The frames of a bonding graph as numbers, field by field and column by column, with the pairs
 * that are joined; the number after the last frame stands for ground.
 */
final class Net {

  /** No frame of a layout is without a number. */
  private static final int UNKNOWN = -1;

  private final List<PlacedModule> frames;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<int[]> pairs = new ArrayList<>();

  private Net(List<PlacedModule> frames) {
    this.frames = frames;
    for (PlacedModule frame : frames) {
      numbers.put(frame.name(), numbers.size());
    }
  }

  /** All that joins frames, or only what is known to bond. */
  static Net of(BondGraph graph, boolean onlySure) {
    Net net = new Net(graph.frames().byColumn());
    for (Joint joint : graph.joints()) {
      if (!onlySure || joint.doubt().isEmpty()) {
        net.join(joint);
      }
    }
    for (Grounding lug : graph.lugs()) {
      if (!onlySure || lug.doubt().isEmpty()) {
        net.join(lug);
      }
    }
    return net;
  }

  static Net of(BondCluster cluster) {
    Net net = new Net(cluster.frames());
    cluster.joints().forEach(net::join);
    cluster.lugs().forEach(net::join);
    return net;
  }

  private void join(Joint joint) {
    pairs.add(new int[] {number(joint.one()), number(joint.other())});
  }

  private void join(Grounding lug) {
    pairs.add(new int[] {number(lug.frame()), ground()});
  }

  int ground() {
    return frames.size();
  }

  PlacedModule frame(int number) {
    return frames.get(number);
  }

  int number(PlacedModule frame) {
    return numbers.getOrDefault(frame.name(), UNKNOWN);
  }

  /** The frames that a jumper would tie to each frame. */
  int[][] beside(Frames all) {
    int[][] beside = new int[frames.size()][];
    for (int i = 0; i < beside.length; i++) {
      beside[i] = all.beside(frames.get(i)).mapToInt(this::number).toArray();
    }
    return beside;
  }

  int size() {
    return frames.size() + pairs.size();
  }

  /** Takes the first part away that joins two as given. */
  void part(int[] pair) {
    pairs.remove(pair);
  }

  void join(int[] pair) {
    pairs.add(pair);
  }

  Walk walk() {
    int[] count = new int[frames.size() + 1];
    for (int[] pair : pairs) {
      count[pair[0]]++;
      count[pair[1]]++;
    }
    int[][] joined = new int[count.length][];
    for (int i = 0; i < count.length; i++) {
      joined[i] = new int[count[i]];
    }
    for (int[] pair : pairs) {
      joined[pair[0]][--count[pair[0]]] = pair[1];
      joined[pair[1]][--count[pair[1]]] = pair[0];
    }
    return new Walk(joined);
  }
}

package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ModuleEdge;
import clampwise.facts.layout.PlacedModule;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A column of modules with the attachments that hold it. An attachment that holds modules of two
 * columns counts to each by the number of module edges it holds there.
 */
final class SlopeColumn {

  private final double[] demandN;
  private final Map<String, Held> held = new LinkedHashMap<>();

  private record Held(Attachment attachment, int edges) {

    Held oneMore() {
      return new Held(attachment, edges + 1);
    }
  }

  private SlopeColumn(int combinations) {
    this.demandN = new double[combinations];
  }

  /** The columns of a field by number. */
  static Map<Integer, SlopeColumn> of(FieldLoads loads) {
    int combinations = loads.standard().combinations().size();
    Map<Integer, SlopeColumn> columns = new TreeMap<>();
    for (PlacedModule module : loads.site().field().modules()) {
      columns
          .computeIfAbsent(module.column(), number -> new SlopeColumn(combinations))
          .add(module, loads.of(module));
    }
    for (ModuleEdge edge : loads.site().field().edges()) {
      SlopeColumn column = Objects.requireNonNull(columns.get(edge.module().column()));
      edge.attachments().forEach(attachment -> column.add(attachment));
    }
    return columns;
  }

  private void add(PlacedModule module, ModuleLoad load) {
    for (int k = 0; k < demandN.length; k++) {
      demandN[k] += module.alongM() * module.upM() * load.alongPa()[k];
    }
  }

  private void add(Attachment attachment) {
    held.merge(attachment.name(), new Held(attachment, 1), (old, same) -> old.oneMore());
  }

  /** How many attachments hold it. */
  int attachments() {
    return held.size();
  }

  /** The first of its attachments; it has to have one. */
  Attachment first() {
    return held.values().iterator().next().attachment;
  }

  /** Number of the combination with the largest force down the slope. */
  int governing() {
    int most = 0;
    for (int k = 1; k < demandN.length; k++) {
      most = demandN[k] > demandN[most] ? k : most;
    }
    return most;
  }

  /** Its force down the slope in a combination [N]. */
  double demandN(int combination) {
    return demandN[combination];
  }

  /**
   * What its attachments may take along the seams together [N], or why that is not known.
   *
   * @param edges how many module edges each attachment holds, by its name
   */
  Outcome<Double> strengthN(
      Map<String, Integer> edges, Function<Attachment, Outcome<Double>> strength) {
    double sumN = 0;
    for (Held each : held.values()) {
      Outcome<Double> own = strength.apply(each.attachment);
      if (own instanceof NotApplicable<Double> none) {
        return none;
      }
      double share =
          (double) each.edges / Objects.requireNonNull(edges.get(each.attachment.name()));
      sumN += share * own.result().orElseThrow();
    }
    return new Result<>(sumN);
  }

  /** How many module edges each attachment of a field holds, by its name. */
  static Map<String, Integer> edges(FieldLoads loads) {
    Map<String, Integer> edges = new HashMap<>();
    loads
        .site()
        .field()
        .edges()
        .forEach(edge -> edge.attachments().forEach(a -> edges.merge(a.name(), 1, Integer::sum)));
    return edges;
  }
}

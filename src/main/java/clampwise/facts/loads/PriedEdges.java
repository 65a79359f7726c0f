package clampwise.facts.loads;

import clampwise.facts.Answers;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.ModuleEdge;
import clampwise.facts.layout.PlacedModule;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Finds the clamp of each line that wind uplift loads least, or presses down. */
final class PriedEdges {

  private static final double ROUNDING_N = 1e-6;
  private static final int LEAST_CLAMPS = 2;

  private final FieldLoads loads;
  private final FieldSite site;
  private final Shares shares;
  private final Answers answers;

  private PriedEdges(LoadedField field, Answers answers) {
    this.loads = field.loads();
    this.site = field.site();
    this.shares = field.shares();
    this.answers = answers;
  }

  static void ask(LoadedField field, Answers answers) {
    new PriedEdges(field, answers).ask();
  }

  private void ask() {
    if (loads.windUnknown().isPresent()) {
      answers.missing(
          PriedEdge.class,
          site.subject().part("lines"),
          loads.windUnknown().get(),
          site.field().at());
      return;
    }
    Map<Integer, Line> lines = new TreeMap<>();
    for (ModuleEdge edge : site.field().edges()) {
      if (edge.attachments().size() >= LEAST_CLAMPS) {
        Held held = held(edge);
        int number = edge.attachments().get(0).line();
        lines.merge(number, new Line(held, held.isPried() ? 1 : 0), Line::with);
      }
    }
    lines.forEach((number, line) -> answers.add(fact(number, line)));
  }

  private record Line(Held worst, int pried) {

    Line with(Line other) {
      return new Line(other.worst.leastN < worst.leastN ? other.worst : worst, pried + other.pried);
    }
  }

  private record Held(
      ModuleEdge edge,
      int combination,
      Attachment least,
      double leastN,
      Attachment most,
      double mostN) {

    boolean isPried() {
      return leastN < 0;
    }
  }

  private Held held(ModuleEdge edge) {
    ModuleLoad load = loads.of(edge.module());
    int combination = mostUplift(load);
    double upliftPa = Math.max(0, -load.upPa()[combination]);
    Attachment least = edge.attachments().get(0);
    Attachment most = least;
    double leastN = Double.POSITIVE_INFINITY;
    double mostN = Double.NEGATIVE_INFINITY;
    for (Attachment clamp : edge.attachments()) {
      double forceN = rounded(areaM2(clamp, edge) * upliftPa);
      least = forceN < leastN ? clamp : least;
      most = forceN > mostN ? clamp : most;
      leastN = Math.min(leastN, forceN);
      mostN = Math.max(mostN, forceN);
    }
    return new Held(edge, combination, least, leastN, most, mostN);
  }

  /** So that no force is neither above nor below zero; adding zero takes the sign off it. */
  private static double rounded(double forceN) {
    return Math.rint(forceN / ROUNDING_N) * ROUNDING_N + 0.0;
  }

  private double areaM2(Attachment clamp, ModuleEdge edge) {
    return shares.of(clamp).stream()
        .filter(share -> share.edge().edge() == edge.edge())
        .filter(share -> share.module().name().equals(edge.module().name()))
        .mapToDouble(Shares.Share::areaM2)
        .sum();
  }

  private static int mostUplift(ModuleLoad load) {
    int most = 0;
    for (int k = 1; k < load.upPa().length; k++) {
      most = load.upPa()[k] < load.upPa()[most] ? k : most;
    }
    return most;
  }

  private PriedEdge fact(int number, Line line) {
    Held worst = line.worst;
    PlacedModule module = worst.edge.module();
    Unit unit = PlaneLoads.forceUnit(site);
    double upliftPa = Math.max(0, -loads.of(module).upPa()[worst.combination]);
    Subject subject = site.subject().part(number == 0 ? "points" : "line " + number);
    return new PriedEdge(
        subject,
        site.subject().part("pried clamps"),
        worst.least.at(),
        unit,
        Map.of("mostN", unit, "edgeN", unit),
        site.field().name(),
        number,
        module.name(),
        Choice.word(worst.edge.edge()),
        worst.least.name(),
        worst.most.name(),
        loads.standard().combinations().get(worst.combination).name(),
        worst.leastN,
        0,
        worst.mostN,
        upliftPa * module.alongM() * module.upM() / 2,
        line.pried,
        place(worst.edge));
  }

  private String place(ModuleEdge edge) {
    List<Attachment> clamps = edge.attachments();
    double half = edge.module().leftM() + edge.module().alongM() / 2;
    boolean left = clamps.get(clamps.size() - 1).alongM() < half;
    boolean right = clamps.get(0).alongM() > half;
    if (!left && !right) {
      return "space the clamps of the edge more evenly";
    }
    Unit unit = site.field().field().gap().map(gap -> gap.unit()).orElse(Unit.MILLIMETRE);
    String halfLength = QuantityPrint.text(edge.module().alongM() / 2, unit);
    return "set one clamp on the "
        + (left ? "right" : "left")
        + " half of the edge, more than "
        + halfLength
        + " from its "
        + (left ? "left" : "right")
        + " corner";
  }
}

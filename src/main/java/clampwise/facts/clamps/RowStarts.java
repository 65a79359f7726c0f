package clampwise.facts.clamps;

import clampwise.calc.ClampedEdge;
import clampwise.calc.Interval;
import clampwise.calc.PhaseSweep;
import clampwise.calc.SeamPhase;
import clampwise.calc.SeamPhase.Place;
import clampwise.calc.SeamPositions;
import clampwise.facts.layout.SeamLine;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds where a row would have to start for the seams to fall in its clamp zones. */
final class RowStarts {

  private static final double MM = 0.001;

  private final FieldCase asked;
  private final ZoneSeams seams;

  RowStarts(FieldCase asked, ZoneSeams seams) {
    this.asked = asked;
    this.seams = seams;
  }

  /** What a set of clamp zones makes of a row. */
  record Best(int modules, Interval starts) {}

  /** The remedy for a row that misses its zones. */
  String better(ModuleRow row) {
    Optional<Best> best = best(row);
    int all = row.modules().size();
    if (best.isEmpty()) {
      return "no start of the row brings a module into the zone; " + instead(row);
    }
    String starts = starts(best.get(), row.start().spot().along().unit());
    return best.get().modules() == all
        ? "start the row " + starts
        : "no start of the row brings all "
            + all
            + " modules into the zone ("
            + starts
            + " it is "
            + best.get().modules()
            + "); "
            + instead(row);
  }

  private String instead(ModuleRow row) {
    return new PhaseAlternatives(asked, seams, this).text(row);
  }

  private static String starts(Best best, Unit unit) {
    double fromM = Math.ceil(best.starts().fromM() / MM - MM) * MM;
    double toM = Math.floor(best.starts().toM() / MM + MM) * MM;
    boolean isWide = fromM < toM;
    String from = QuantityPrint.text(isWide ? fromM : best.starts().fromM(), unit);
    String to = QuantityPrint.text(toM, unit);
    return isWide && !from.equals(to) ? "between " + from + " and " + to : "at " + from;
  }

  private Optional<Best> best(ModuleRow row) {
    double startM = row.startM();
    int zones = seams.edges(row.modules().get(0)).size();
    return IntStream.range(0, zones)
        .mapToObj(zone -> best(new SeamPhase(under(row), places(row, zone)), startM))
        .flatMap(Optional::stream)
        .max(Comparator.comparingInt(Best::modules));
  }

  private List<Place> places(ModuleRow row, int zone) {
    return row.modules().stream()
        .map(module -> new Place(module.leftM() - row.startM(), edge(seams.edges(module), zone)))
        .toList();
  }

  private static ClampedEdge edge(List<ClampedEdge> edges, int zone) {
    return edges.get(Math.min(zone, edges.size() - 1));
  }

  SeamPositions under(ModuleRow row) {
    return seams.seams(row.modules().get(0));
  }

  /**
   * The best starts within one pitch of the present one: of those that bring most modules into the
   * zone, the nearest that is at least half as wide as the widest.
   */
  Optional<Best> best(SeamPhase phase, double startM) {
    double pitchM = pitchM();
    PhaseSweep sweep = phase.sweep(new Interval(startM - pitchM, startM + pitchM));
    double widestM = sweep.bestStarts().widest().map(Interval::lengthM).orElse(0.0);
    return sweep.bestStarts().parts().stream()
        .filter(part -> sweep.best() > 0 && part.lengthM() >= widestM / 2)
        .min(Comparator.comparingDouble(part -> Math.abs(part.middleM() - startM)))
        .map(part -> new Best(sweep.best(), part));
  }

  private double pitchM() {
    List<SeamLine> all = asked.plane().seams();
    double widthM = all.get(all.size() - 1).alongM() - all.get(0).alongM();
    return all.size() < 2
        ? 0
        : widthM / (all.stream().mapToInt(SeamLine::number).max().orElse(2) - 1);
  }
}

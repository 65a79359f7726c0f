package clampwise.facts.layout;

import clampwise.calc.Snap;
import clampwise.job.Choice;
import clampwise.job.Field.DesignLoad;
import clampwise.job.ModuleType;
import clampwise.job.ModuleType.ClampZone;
import clampwise.job.ModuleType.LoadBasis;
import clampwise.job.ModuleType.Side;
import clampwise.job.Quantity.Pressure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The rows of a module's clamp-zone table for one side, the highest rating first.
 *
 * <p>The rating of a row is the sum of its loads toward and away from the roof.
 *
 * @param rows the rows of one side
 * @param areTestLoads whether their loads are test loads
 */
public record ClampZones(List<ClampZone> rows, boolean areTestLoads) {

  private static final Comparator<ClampZone> BY_RATING =
      Comparator.comparingDouble(ClampZones::ratingPa)
          .reversed()
          .thenComparingDouble(row -> row.zone().max().m() - row.zone().min().m());

  /** The rows of one side of a module. */
  public static ClampZones of(ModuleType type, Side side) {
    List<ClampZone> rows =
        type.clampZones().stream()
            .filter(row -> row.side().value() == side)
            .sorted(BY_RATING)
            .toList();
    boolean test = type.loadsAre().map(Choice::value).filter(LoadBasis.TEST::equals).isPresent();
    return new ClampZones(rows, test);
  }

  /** The row with the highest rating that holds a clamp at this distance from the corner [m]. */
  public Optional<ClampZone> holding(double fromCornerM) {
    double cornerM = Snap.m(fromCornerM);
    return rows.stream().filter(row -> holds(row, cornerM)).findFirst();
  }

  /** The row whose zone is widest. */
  public Optional<ClampZone> widest() {
    return rows.stream()
        .max(
            Comparator.comparingDouble(row -> Snap.m(row.zone().max().m() - row.zone().min().m())));
  }

  /**
   * The rows that carry a design load; all rows if none does.
   *
   * @param testOverDesign a test load over the design load it stands for
   */
  public ClampZones carrying(Optional<DesignLoad> load, double testOverDesign) {
    double factor = areTestLoads ? testOverDesign : 1;
    List<ClampZone> enough =
        rows.stream()
            .filter(row -> carries(row.down(), load.flatMap(DesignLoad::down), factor))
            .filter(row -> carries(row.up(), load.flatMap(DesignLoad::up), factor))
            .toList();
    return enough.isEmpty() ? this : new ClampZones(enough, areTestLoads);
  }

  /** Whether a row's zone holds a clamp at this distance from the corner [m], ends included. */
  public static boolean holds(ClampZone row, double fromCornerM) {
    return Snap.m(row.zone().min().m()) <= fromCornerM
        && fromCornerM <= Snap.m(row.zone().max().m());
  }

  private static boolean carries(
      Optional<Pressure> rated, Optional<Pressure> asked, double factor) {
    return asked.isEmpty()
        || rated.filter(pressure -> pressure.pa() / factor >= asked.get().pa()).isPresent();
  }

  private static double ratingPa(ClampZone row) {
    return row.down().map(Pressure::pa).orElse(0.0) + row.up().map(Pressure::pa).orElse(0.0);
  }
}

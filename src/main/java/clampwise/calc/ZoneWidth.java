package clampwise.calc;

import clampwise.calc.trail.Table;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Locale;
import java.util.Optional;

/**
 * Widths of the wind zones of a roof for components and cladding, ASCE 7-16 and 7-22, figures
 * 30.3-2A to 30.3-5B (buildings of h up to 60 ft).
 */
public final class ZoneWidth {

  private static final String A = "zone-dimension";
  private static final double LENGTH_NOISE_M = 1e-9;
  private static final double ANGLE_NOISE_RAD = 1e-9;

  private ZoneWidth() {}

  /** Shape of the roof. */
  public enum Shape {
    GABLE,
    HIP,
    MONOSLOPE,
    FLAT
  }

  /**
   * A building as the figures ask for it.
   *
   * @param shape shape of the roof
   * @param slopeRad slope [rad]
   * @param leastPlanM least horizontal dimension of the building [m]
   * @param heightM height h: the eave's up to 10 degrees, else the mean roof height [m]
   */
  public record Roof(Shape shape, double slopeRad, double leastPlanM, double heightM) {}

  /**
   * Zone widths in plan.
   *
   * @param figure number of the figure
   * @param edgeM width of the edge zone: a, or 0.6 h of a low-slope roof [m]
   * @param cornerM width of the corner's legs: a, or 0.2 h of a low-slope roof [m]
   */
  public record Widths(String figure, double edgeM, double cornerM) {}

  /**
   * Widths of the edge and corner zones.
   *
   * <p>Flat roofs and slopes up to 7 degrees (monoslope roofs: up to 3 degrees, from memory):
   * figure 30.3-2A, edge zone 0.6 h wide, corner legs 0.6 h long and 0.2 h wide. Steeper: a = 0.1
   * of the least horizontal dimension or 0.4 h, whichever is less, but not less than 0.04 of the
   * least dimension or 3 ft; where the slope is at most 7 degrees and the least dimension above 300
   * ft, a is at most 0.8 h. Second-hand for both editions, which agree; the rule for a was read in
   * the worked case of a building of 60 ft by 100 ft, h = 20 ft, a = 6 ft.
   *
   * <p>Valid for h up to 60 ft; gable and hip roofs up to 45 degrees, monoslope roofs up to 30.
   *
   * @param tables tables of the wind standard in the edition in force
   * @param roof the building [m, rad]
   * @return widths in plan [m], or why the figures do not apply
   */
  public static Outcome<Widths> of(EditionTables tables, Roof roof) {
    double highestM = tables.row("tall-roof-figure").number("height-up-to");
    return roof.heightM() > highestM + LENGTH_NOISE_M
        ? new Outcome.NotApplicable<>(
            "the zone figures hold up to a height of " + QuantityPrint.text(highestM, Unit.FOOT))
        : figure(tables, roof).then(figure -> widths(tables, roof, figure));
  }

  /**
   * Figure of the zones and coefficients of a roof of h up to 60 ft, by shape and slope; hip roofs
   * have other numbers in the two editions.
   *
   * @param tables tables of the wind standard in the edition in force
   * @return number of the figure, such as {@code 30.3-2B}, or why there is none
   */
  public static Outcome<String> figure(EditionTables tables, Roof roof) {
    String shape = roof.shape().name().toLowerCase(Locale.ROOT);
    return tables.table("roof-figures").rows().stream()
        .filter(row -> row.word("shape").equals(shape))
        .filter(row -> isUpTo(roof, row.number("up-to")))
        .findFirst()
        .<Outcome<String>>map(row -> new Outcome.Result<>(row.word("figure")))
        .orElseGet(
            () -> new Outcome.NotApplicable<>("no figure covers a " + shape + " roof this steep"));
  }

  private static Outcome<Widths> widths(EditionTables tables, Roof roof, String figure) {
    double aM = aM(tables, roof);
    double heightM = roof.heightM();
    return new Outcome.Result<>(
        lowSlope(tables, figure)
            .map(
                low ->
                    new Widths(figure, low.number("band") * heightM, low.number("leg") * heightM))
            .orElseGet(() -> new Widths(figure, aM, aM)));
  }

  /** The shares of the height that the zones of a low-slope roof have, if the figure is its. */
  public static Optional<Table.Row> lowSlope(EditionTables tables, String figure) {
    return tables.table("low-slope-zones").row("figure", figure);
  }

  /**
   * The dimension a of the zone figures, see {@link #of}.
   *
   * @param tables tables of the wind standard in the edition in force
   * @param roof the building [m, rad]
   * @return a [m]
   */
  public static double aM(EditionTables tables, Roof roof) {
    Table.Row rule = tables.row(A);
    double leastM = roof.leastPlanM();
    double usualM =
        Math.min(rule.number("of-plan") * leastM, rule.number("of-height") * roof.heightM());
    double aM =
        Math.max(usualM, Math.max(rule.number("least-of-plan") * leastM, rule.number("least")));
    return isLowAndWide(tables, roof)
        ? Math.min(aM, rule.number("wide-of-height") * roof.heightM())
        : aM;
  }

  /** Whether a is at most 0.8 h: a slope of at most 7 degrees and wider than 300 ft. */
  public static boolean isLowAndWide(EditionTables tables, Roof roof) {
    Table.Row rule = tables.row(A);
    return isUpTo(roof, rule.number("low-up-to")) && roof.leastPlanM() > rule.number("wide-above");
  }

  private static boolean isUpTo(Roof roof, double slopeRad) {
    return roof.slopeRad() <= slopeRad + ANGLE_NOISE_RAD;
  }
}

package clampwise.calc.combination;

import clampwise.calc.EditionTables;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The load combinations of one standard and method.
 *
 * @param all its combinations, in the order of the standard
 */
public record Combinations(List<Combination> all) {

  private static final String FROM_MEMORY = "from memory";

  public Combinations {
    all = List.copyOf(all);
  }

  /**
   * Combinations of ASCE 7-16 and 7-22, 2.3.1 (strength) and 2.4.1 (allowable stress), without
   * seismic, fluid, soil and ice loads; where the standard says "Lr or S or R", one each. Snow of
   * 7-22 is of strength level. Partly read, partly from libraries; 0.3 S beside other leading loads
   * in the strength design of 7-22 is from memory, and {@link #withCompanionSnow} takes another.
   *
   * @param tables tables of the edition
   * @param method allowable stress or strength design
   * @return the combinations
   */
  public static Combinations of(EditionTables tables, Method method) {
    Table table = tables.table(method.table());
    return new Combinations(table.rows().stream().map(row -> combination(table, row)).toList());
  }

  /**
   * Combinations of EN 1990, expression 6.10, for the design of parts of roofs: dead load alone,
   * with snow leading, with wind leading, with the imposed load of the roof (never together with
   * snow or wind), and dead load at its least with wind. From memory; the partial factors are the
   * job's.
   *
   * @param factors partial factors and combination factors
   * @return the combinations
   */
  public static Combinations of(PartialFactors factors) {
    double most = factors.deadUnfavourable();
    double variable = factors.variable();
    return new Combinations(
        List.of(
            eurocode(new Combination.Factors(most, 0, 0, 0, 0, 0)),
            eurocode(new Combination.Factors(most, 0, variable, 0, 0, 0)),
            eurocode(
                new Combination.Factors(most, 0, 0, variable, 0, variable * factors.psiWind())),
            eurocode(
                new Combination.Factors(most, 0, 0, variable * factors.psiSnow(), 0, variable)),
            eurocode(new Combination.Factors(factors.deadFavourable(), 0, 0, 0, 0, variable))));
  }

  /**
   * The same with another factor for snow that is not the leading load, where the shipped one is
   * from memory (strength design of 7-22).
   */
  public Combinations withCompanionSnow(double factor) {
    return new Combinations(
        all.stream().map(combination -> companion(combination, factor)).toList());
  }

  /** The effect of every combination. */
  public List<Combined> effects(Actions actions) {
    return all.stream().map(combination -> combination.of(actions)).toList();
  }

  /** The combinations that govern uplift, pressure and the force down the slope. */
  public Governing governing(Actions actions) {
    List<Combined> effects = effects(actions);
    return new Governing(
        most(effects, combined -> -combined.normalUp()),
        most(effects, Combined::normalDown),
        most(effects, Combined::alongSlope));
  }

  /** The first of those with the largest value: the simplest combination where several agree. */
  private static Combined most(List<Combined> effects, ToDoubleFunction<Combined> value) {
    Combined most = effects.get(0);
    for (Combined each : effects) {
      most = value.applyAsDouble(each) > value.applyAsDouble(most) ? each : most;
    }
    return most;
  }

  private static Combination combination(Table table, Table.Row row) {
    Combination.Factors factors =
        new Combination.Factors(
            row.number("dead"),
            row.number("live"),
            row.number("roof-live"),
            row.number("snow"),
            row.number("rain"),
            row.number("wind"));
    Source shared = table.source();
    Source source =
        new Source(
            shared.document(),
            shared.edition(),
            row.word("clause"),
            row.word("obtained"),
            shared.validity());
    return new Combination(CombinationName.asce(factors), source, factors);
  }

  private static Combination eurocode(Combination.Factors factors) {
    Source source = Source.of("en-1990", "6.4.3.2, Eq. 6.10", FROM_MEMORY);
    return new Combination(CombinationName.eurocode(factors), source, factors);
  }

  private static Combination companion(Combination combination, double factor) {
    boolean isDoubtful =
        combination.factors().snow() > 0 && combination.source().obtained().equals(FROM_MEMORY);
    Combination.Factors factors = combination.factors().withSnow(factor);
    return isDoubtful
        ? new Combination(CombinationName.asce(factors), combination.source(), factors)
        : combination;
  }
}

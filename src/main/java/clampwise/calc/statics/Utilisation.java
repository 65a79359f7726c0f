package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Optional;

/**
 * Share of an attachment's strength that a load combination uses; 1 is the limit.
 *
 * @param normal share across the roof
 * @param slope share along the seam
 * @param together share of both by the interaction
 */
public record Utilisation(double normal, double slope, double together) {

  /**
   * Demand over strength in each direction, and both together.
   *
   * <p>Source: definition; the interaction is that of the part's data, linear if they are silent.
   * Not applicable where a direction is loaded whose strength is not stated.
   *
   * @param demand forces of one load combination
   * @param resistance strengths of the same limit state
   */
  public static <S extends LimitState> Outcome<Utilisation> of(
      Demand<S> demand, Resistance<S> resistance, Interaction interaction) {
    boolean up = demand.normalN() >= 0;
    Optional<Double> normal =
        share(Math.abs(demand.normalN()), up ? resistance.up() : resistance.down());
    Optional<Double> slope = share(Math.abs(demand.slopeN()), resistance.slope());
    if (normal.isEmpty() || slope.isEmpty()) {
      String direction = normal.isPresent() ? "along the seam" : up ? "upward" : "downward";
      return new Outcome.NotApplicable<>("no strength " + direction + " is stated");
    }
    double together = interaction.together(normal.get(), slope.get());
    return new Outcome.Result<>(new Utilisation(normal.get(), slope.get(), together));
  }

  private static <S extends LimitState> Optional<Double> share(
      double forceN, Optional<Strength<S>> strength) {
    return forceN == 0 ? Optional.of(0.0) : strength.map(s -> forceN / s.forceN());
  }

  /** The same, written into the work. */
  public static <S extends LimitState> Outcome<Utilisation> show(
      Demand<S> demand, Resistance<S> resistance, Interaction interaction, Work work) {
    return of(demand, resistance, interaction)
        .then(
            used -> {
              boolean up = demand.normalN() >= 0;
              Optional<Strength<S>> normal = up ? resistance.up() : resistance.down();
              Term across = Term.number("U_n", "share across the roof", used.normal);
              share(across, up ? "up" : "down", Math.abs(demand.normalN()), normal, work);
              Term along = Term.number("U_s", "share along the seam", used.slope);
              share(along, "along", Math.abs(demand.slopeN()), resistance.slope(), work);
              used.write(interaction, work);
              return new Outcome.Result<>(used);
            });
  }

  private static <S extends LimitState> void share(
      Term share, String direction, double forceN, Optional<Strength<S>> strength, Work work) {
    if (forceN == 0) {
      work.write(Line.given(share, Source.STATICS, "No force acts this way."));
      return;
    }
    work.write(
        share,
        "E_" + direction + "/R_" + direction,
        Source.STATICS,
        Term.force("E_" + direction, "force, " + direction, forceN),
        Term.force("R_" + direction, "strength, " + direction, strength.orElseThrow().forceN()));
  }

  private void write(Interaction interaction, Work work) {
    Term share = Term.number("U", "share of the strength used", together);
    Line line =
        new Line(
            share,
            interaction.formula(),
            List.of(
                Term.number("U_n", "share across the roof", normal),
                Term.number("U_s", "share along the seam", slope)),
            Source.of("part-sheet", "interaction", "as entered; linear where it is silent"),
            "");
    work.write(together > 1 ? line.noting("More than the attachment may take.") : line);
  }
}

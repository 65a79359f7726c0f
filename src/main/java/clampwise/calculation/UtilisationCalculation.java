package clampwise.calculation;

import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.NUMBER;

import clampwise.calc.Outcome;
import clampwise.calc.statics.Demand;
import clampwise.calc.statics.Interaction;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Resistance;
import clampwise.calc.statics.Strength;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.statics.Utilisation;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The share of an attachment's strength that one load combination uses. */
final class UtilisationCalculation {

  private static final String DEMAND = "demand-is";

  private final Given given;
  private final Work work;

  private UtilisationCalculation(Given given, Work work) {
    this.given = given;
    this.work = work;
  }

  static Calculation calculation() {
    return new Calculation(
        "attachment-utilisation",
        "Share of an attachment's strength that a load combination uses",
        "demand and strength of the same limit state; strength for this profile, metal, thickness"
            + " and substrate; one of up and down",
        List.of(
            Input.of("up", "force away from the roof", FORCE, 0.0).unless("0 N"),
            Input.of("down", "force toward the roof", FORCE, 0.0).unless("0 N"),
            Input.of("along", "force down the slope, along the seam", FORCE, 0.0).unless("0 N"),
            Input.word(DEMAND, "service loads (asd) or factored loads (lrfd)", "asd", "lrfd"),
            Input.of("tested-up", "tested load away from the roof", FORCE, 1e-3).orNothing(),
            Input.of("tested-down", "tested load toward the roof", FORCE, 1e-3).orNothing(),
            Input.of("tested-along", "tested load along the seam", FORCE, 1e-3).orNothing(),
            Input.word("loads-are", "what a tested load is", "allowable", "ultimate", "design"),
            Input.of("safety-factor", "ultimate over allowable load", NUMBER, 1.0, 10.0)
                .orNothing(),
            Input.of("resistance-factor", "design over ultimate load", NUMBER, 0.05, 1.0)
                .orNothing(),
            Input.word("interaction", "of both directions", "linear", "quadratic", "none")
                .unless("linear")),
        (given, work) -> new UtilisationCalculation(given, work).run());
  }

  private Outcome<List<Term>> run() {
    if (given.number("up") > 0 && given.number("down") > 0) {
      return new Outcome.NotApplicable<>(
          "no load combination pulls up and presses down at once: give up or down");
    }
    return given.word(DEMAND).equals("asd")
        ? this.<LimitState.Asd>run("safety-factor", TestedLoad::allowable)
        : this.<LimitState.Lrfd>run("resistance-factor", TestedLoad::design);
  }

  /** Turns a stated load into a strength of one limit state. */
  private interface Conversion<S extends LimitState> {
    Outcome<Strength<S>> of(TestedLoad tested, String direction, Work work);
  }

  private <S extends LimitState> Outcome<List<Term>> run(String factor, Conversion<S> conversion) {
    boolean down = given.number("down") > 0;
    Demand<S> demand =
        new Demand<>(given.number("up") - given.number("down"), given.number("along"));
    return strength(down ? "down" : "up", factor, conversion)
        .then(
            normal ->
                strength("along", factor, conversion)
                    .then(along -> used(demand, new Resistance<>(normal, normal, along))));
  }

  /** The strength of a direction; none if no tested load is given. */
  private <S extends LimitState> Outcome<Optional<Strength<S>>> strength(
      String direction, String factor, Conversion<S> conversion) {
    Optional<Double> tested = given.find("tested-" + direction);
    if (tested.isEmpty() || given.number(direction) == 0) {
      return new Outcome.Result<>(Optional.empty());
    }
    TestedLoad load =
        new TestedLoad(
            tested.get(),
            TestedLoad.Meaning.valueOf(given.word("loads-are").toUpperCase(Locale.ROOT)),
            given.find(factor));
    return conversion
        .of(load, direction, work)
        .then(strength -> new Outcome.Result<>(Optional.of(strength)));
  }

  private <S extends LimitState> Outcome<List<Term>> used(
      Demand<S> demand, Resistance<S> resistance) {
    Interaction interaction =
        Interaction.valueOf(given.word("interaction").toUpperCase(Locale.ROOT));
    return Utilisation.show(demand, resistance, interaction, work)
        .then(
            used ->
                new Outcome.Result<>(
                    List.of(Term.number("U", "share of the strength used", used.together()))));
  }
}

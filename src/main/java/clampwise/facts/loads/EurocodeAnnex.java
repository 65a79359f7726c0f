package clampwise.facts.loads;

import clampwise.calc.combination.PartialFactors;
import clampwise.calc.en.PeakPressure;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.job.Loads;
import clampwise.job.Loads.Annex;
import clampwise.job.Quantity.Factor;
import clampwise.job.Site;
import java.util.Optional;
import java.util.function.Function;

/** What a national annex sets, from the job; the lines say which recommended values are assumed. */
final class EurocodeAnnex {

  private static final double RECOMMENDED = 1;

  private final FieldSite asked;
  private final Work work;

  private EurocodeAnnex(FieldSite asked, Work work) {
    this.asked = asked;
    this.work = work;
  }

  /** Parameters of the wind; all factors are 1 where none is given (4.2 and 4.3.3). */
  static PeakPressure.Annex wind(FieldSite asked, Work work) {
    EurocodeAnnex annex = new EurocodeAnnex(asked, work);
    return new PeakPressure.Annex(
        annex.factor("c_dir", "directional factor", annex.given(Annex::directionFactor)),
        annex.factor("c_season", "seasonal factor", annex.given(Annex::seasonFactor)),
        annex.factor(
            "c_o", "orography factor", asked.site(Site::topographicFactor).map(Factor::value)),
        annex.given(Annex::terrainFactor),
        annex.given(Annex::airDensity),
        annex.given(Annex::turbulenceFactor));
  }

  /** Partial and combination factors of EN 1990. */
  static PartialFactors partial(FieldSite asked, Work work) {
    EurocodeAnnex annex = new EurocodeAnnex(asked, work);
    return PartialFactors.of(
        asked.layout().catalogue().codes().factorsOfEn(),
        new PartialFactors.Given(
            annex.given(Annex::deadUnfavourable),
            annex.given(Annex::deadFavourable),
            annex.given(Annex::variable),
            annex.given(Annex::psiSnow),
            annex.given(Annex::psiWind)),
        work);
  }

  private Optional<Double> given(Function<Loads.Annex, Optional<Factor>> of) {
    return asked.annex(of).map(Factor::value);
  }

  private double factor(String symbol, String meaning, Optional<Double> given) {
    String note = given.isPresent() ? "given" : "assumption: recommended value, none given";
    return work.write(
        Line.given(
            Term.number(symbol, meaning, given.orElse(RECOMMENDED)),
            Source.of("en-1991-1-4", "4.2 and 4.3.3", "from memory"),
            note));
  }
}

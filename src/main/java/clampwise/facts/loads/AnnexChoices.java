package clampwise.facts.loads;

import clampwise.calc.en.PeakPressure;
import clampwise.calc.trail.Table;
import clampwise.catalogue.CodeTables;
import clampwise.job.Choice;
import clampwise.job.Job;
import clampwise.job.Loads;
import clampwise.job.Quantity.Factor;
import clampwise.job.Site;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What a job gives for a national annex of the Eurocodes, beside the value that the Eurocode itself
 * recommends. A smaller factor is the milder one, but for dead load that helps.
 */
final class AnnexChoices {

  private static final String WIND = "EN 1991-1-4";
  private static final String BASIS = "EN 1990";

  /** The recommended terrain factor is a power; annexes print three digits. */
  private static final double PRINTED = 1e3;

  private final Table factors;
  private final PeakPressure.Annex wind;
  private final Consumer<Given> into;

  /**
   * A factor that is given.
   *
   * @param key its key in the job
   * @param what what it is, in words
   * @param chosen what is given
   * @param instead what stands when nothing is given, in words
   * @param mild whether it is milder than that
   */
  record Given(String key, String what, Factor chosen, String instead, boolean mild) {}

  private AnnexChoices(Job job, CodeTables codes, Consumer<Given> into) {
    this.factors = codes.factorsOfEn();
    this.wind =
        PeakPressure.Annex.recommended(
            codes.windOfEn(), job.site().flatMap(Site::terrain).map(Choice::toString).orElse(""));
    this.into = into;
  }

  /** All factors of the annex that a job under the Eurocodes gives. */
  static void ask(Job job, CodeTables codes, Consumer<Given> into) {
    boolean eurocode =
        job.site()
            .flatMap(Site::codes)
            .flatMap(Site.Codes::loads)
            .filter(code -> code.value() == Site.LoadCode.EN_1991)
            .isPresent();
    if (eurocode) {
      job.loads()
          .flatMap(Loads::annex)
          .ifPresent(annex -> new AnnexChoices(job, codes, into).ask(annex));
    }
  }

  private void ask(Loads.Annex annex) {
    wind("direction-factor", "the directional factor of wind", annex.directionFactor(), 1);
    wind("season-factor", "the seasonal factor of wind", annex.seasonFactor(), 1);
    wind.terrainFactor()
        .ifPresent(own -> wind("terrain-factor", "the terrain factor", annex.terrainFactor(), own));
    wind.density()
        .ifPresent(own -> wind("air-density", "the density of air", annex.airDensity(), own));
    wind.turbulenceFactor()
        .ifPresent(
            own ->
                wind("turbulence-factor", "the turbulence factor", annex.turbulenceFactor(), own));
    partial("dead-unfavourable", "the factor of dead load that adds", annex.deadUnfavourable());
    partial("dead-favourable", "the factor of dead load that helps", annex.deadFavourable());
    partial("variable", "the partial factor of wind and snow", annex.variable());
    partial("psi-snow", "the combination factor of snow", annex.psiSnow());
    partial("psi-wind", "the combination factor of wind", annex.psiWind());
  }

  private void wind(String key, String what, Optional<Factor> given, double recommended) {
    double printed = Math.rint(recommended * PRINTED) / PRINTED;
    given.ifPresent(
        factor ->
            into.accept(
                new Given(
                    "annex." + key,
                    what,
                    factor,
                    recommended(printed, WIND),
                    factor.value() < printed)));
  }

  private void partial(String key, String what, Optional<Factor> given) {
    double recommended = factors.row("name", key).orElseThrow().number("value");
    boolean helps = key.equals("dead-favourable");
    given.ifPresent(
        factor ->
            into.accept(
                new Given(
                    "annex." + key,
                    what,
                    factor,
                    recommended(recommended, BASIS),
                    helps ? factor.value() > recommended : factor.value() < recommended)));
  }

  private static String recommended(double value, String standard) {
    return "the " + QuantityPrint.text(value, Unit.NUMBER) + " that " + standard + " recommends";
  }
}

package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Combination;
import clampwise.calc.statics.SlopeSum;
import clampwise.calc.trail.Chain;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Section;
import clampwise.calc.trail.Work;
import clampwise.facts.Answers;
import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Flag;
import clampwise.job.Panel;
import clampwise.job.Quantity.Length;
import clampwise.job.Quantity.Pressure;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds up all that pulls each panel run of a floating covering down the slope, which ends at its
 * fixed point.
 */
final class FixedPointForces {

  private static final double ROUNDING_N = 1e-6;

  private final PlaneLoads plane;
  private final Panel panel;
  private final Answers answers;

  private FixedPointForces(PlaneLoads plane, Panel panel, Answers answers) {
    this.plane = plane;
    this.panel = panel;
    this.answers = answers;
  }

  static void ask(PlaneLoads plane, Answers answers) {
    plane
        .onClips()
        .filter(
            panel -> panel.clips().filter(clips -> clips.value() == Panel.Clips.FIXED).isEmpty())
        .ifPresent(panel -> new FixedPointForces(plane, panel, answers).ask());
  }

  private void ask() {
    Outcome<Double> strengthN = strengthN();
    if (strengthN instanceof NotApplicable<Double> none) {
      missing(plane.subject().part("fixed point"), none.reason());
    } else if (strengthN instanceof Result<Double> known) {
      double pitchM = panel.pitch().map(Length::m).orElseThrow();
      Strip strip = new Strip(pitchM, weightPa() * slopeSine(), snowPa());
      PanelRun.of(plane, slidingLapsM(), pitchM).forEach(run -> ask(run, known.value(), strip));
    }
  }

  /** What the fixed point may take, or the first thing that is missing for all runs. */
  private Outcome<Double> strengthN() {
    if (panel.clips().isEmpty()) {
      return new NotApplicable<>(
          plane.ofPanel("whether " + plane.covering() + " floats on its clips", "clips"));
    }
    if (plane.slopeUnknown().isPresent()) {
      return new NotApplicable<>(plane.slopeUnknown().get());
    }
    if (plane.isPanelKeyLost("fixed-point-strength")) {
      return new NotApplicable<>("what " + fixedPoint() + " may take could not be read");
    }
    if (panel.fixedPointStrength().isEmpty()) {
      return new NotApplicable<>(
          "nobody says what "
              + fixedPoint()
              + " may take down the slope (fixed-point-strength): who checked the panel's pin?");
    }
    if (plane.plane().reading().areEndLapsLost()) {
      return new NotApplicable<>(plane.plane().reading().endLapsUnknown());
    }
    return panel.pitch().isEmpty()
        ? new NotApplicable<>(plane.ofPanel("the pitch of " + plane.covering(), "pitch"))
        : PanelStrength.of(panel.fixedPointStrength().get(), fixedPoint(), plane.standard());
  }

  private String fixedPoint() {
    return "the fixed point of " + plane.covering();
  }

  private List<Double> slidingLapsM() {
    boolean slides = plane.plane().plane().slidingEndLaps().filter(Flag::value).isPresent();
    return slides ? plane.plane().endLapsM() : List.of();
  }

  /**
   * What every panel has in common.
   *
   * @param weightPa own weight, down the slope [Pa]
   * @param snowPa snow where no module lies, down the slope [Pa]
   */
  private record Strip(double pitchM, double weightPa, double snowPa) {}

  private void ask(PanelRun run, double strengthN, Strip strip) {
    Subject subject = plane.subject().part(run.name());
    List<SeamRun.Pull> pulls = new ArrayList<>();
    for (SeamRun seam : run.seams()) {
      Outcome<List<SeamRun.Pull>> own = seam.pulls();
      if (own instanceof NotApplicable<List<SeamRun.Pull>> none) {
        missing(subject, none.reason());
        return;
      }
      own.result().ifPresent(pulls::addAll);
    }
    answers.add(fact(run, subject, worst(run, pulls, strip), strengthN));
  }

  /** What one combination brings to a fixed point [N]. */
  private record Sum(String combination, double arrayN, double panelN, double snowN) {

    double forceN() {
      return arrayN + panelN + snowN;
    }

    void show(Work work) {
      SlopeSum.fixedPoint(arrayN, panelN, snowN, work);
    }
  }

  private record SumChain(Measure measure, String run, Sum sum) implements Chain {

    @Override
    public List<Section> sections() {
      ChainWriter chain = new ChainWriter(measure);
      chain.deciding("Down the slope on the " + run + ": " + sum.combination, sum::show);
      return chain.sections();
    }

    @Override
    public String toString() {
      return "how the " + run + " is pulled";
    }
  }

  private Sum worst(PanelRun run, List<SeamRun.Pull> pulls, Strip strip) {
    Sum worst = new Sum("", 0, 0, 0);
    for (int k = 0; k < plane.combinations().size(); k++) {
      Combination combination = plane.combinations().get(k);
      Sum sum =
          new Sum(
              combination.name(),
              halfN(pulls, k),
              combination.factors().dead() * strip.weightPa * run.lengthM() * strip.pitchM,
              combination.factors().snow() * strip.snowPa * run.openM() * strip.pitchM);
      worst = k == 0 || sum.forceN() > worst.forceN() ? sum : worst;
    }
    return worst;
  }

  /** A seam joins two panels, and each takes half of what holds to it. */
  private static double halfN(List<SeamRun.Pull> pulls, int combination) {
    double sumN = 0;
    for (SeamRun.Pull pull : pulls) {
      sumN += pull.forces().get(combination).alongN();
    }
    return sumN / 2;
  }

  /** Largest snow on the array, down the slope by area of roof; taken for the roof beside it. */
  private double snowPa() {
    return plane.fields().stream()
        .flatMap(field -> field.field().modules().stream().map(field.loads()::of))
        .mapToDouble(load -> load.actions().snow().along())
        .max()
        .orElse(0);
  }

  private double weightPa() {
    return panel
        .weight()
        .map(Pressure::pa)
        .orElseGet(() -> plane.limits().get("covering-weight").si());
  }

  private double slopeSine() {
    return Math.sin(plane.fields().get(0).site().slopeRad().orElseThrow());
  }

  private FixedPointForce fact(PanelRun run, Subject subject, Sum sum, double strengthN) {
    Unit unit = plane.forceUnit();
    return new FixedPointForce(
        subject,
        plane.subject().part("fixed point"),
        panel.fixedPointStrength().orElseThrow().force().at(),
        unit,
        Map.of("arrayN", unit, "panelN", unit, "snowN", unit, "utilisation", Unit.NUMBER),
        run.name(),
        plane.covering(),
        panel.fixedPoint().map(Choice::toString),
        sum.combination,
        sum.arrayN,
        sum.panelN,
        sum.snowN,
        rounded(sum.forceN()),
        rounded(strengthN),
        Math.rint(sum.forceN() / strengthN * 1e9) / 1e9,
        rounded(plane.limits().get("utilisation-note").si() * strengthN),
        Optional.of(new SumChain(plane.fields().get(0).site().measure(), run.name(), sum)));
  }

  private static double rounded(double forceN) {
    return Math.rint(forceN / ROUNDING_N) * ROUNDING_N;
  }

  private void missing(Subject subject, String reason) {
    boolean loads = plane.slopeUnknown().isPresent() && panel.clips().isPresent();
    Span at = loads ? plane.fieldsAt() : plane.panelAt();
    answers.missing(FixedPointForce.class, subject, reason, at);
  }
}

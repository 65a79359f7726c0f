package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Method;
import clampwise.calc.statics.TestedLoad;
import clampwise.calc.statics.TestedLoad.Meaning;
import clampwise.calc.trail.Work;
import clampwise.job.Panel;
import clampwise.job.Quantity.Factor;
import java.util.Optional;

/** What a clip or a fixed point of a covering may take, for the limit state of the loads. */
final class PanelStrength {

  private PanelStrength() {}

  /**
   * The strength [N], or why it cannot be held against the loads.
   *
   * @param what whose strength it is, such as {@code the clips of steel seams}
   */
  static Outcome<Double> of(Panel.Strength written, String what, Standard standard) {
    if (written.loadsAre().isEmpty()) {
      return new NotApplicable<>(
          "whether the strength of "
              + what
              + " is allowable, ultimate or a resistance is not given (loads-are)");
    }
    Method method = standard.method();
    Work work = Work.unread();
    TestedLoad load =
        new TestedLoad(written.force().n(), meaning(written), factor(written, method));
    Outcome<Double> strengthN =
        method == Method.ASD
            ? load.allowable("p", work).then(strength -> new Result<>(strength.forceN()))
            : standard
                .design()
                .of(load, "p", work)
                .then(strength -> new Result<>(strength.forceN()));
    return strengthN instanceof NotApplicable<Double> none
        ? new NotApplicable<>("the strength of " + what + ": " + none.reason())
        : strengthN;
  }

  private static Meaning meaning(Panel.Strength written) {
    return switch (written.loadsAre().orElseThrow().value()) {
      case ALLOWABLE -> Meaning.ALLOWABLE;
      case ULTIMATE -> Meaning.ULTIMATE;
      case RESISTANCE -> Meaning.DESIGN;
    };
  }

  private static Optional<Double> factor(Panel.Strength written, Method method) {
    return (method == Method.ASD ? written.safetyFactor() : written.resistanceFactor())
        .map(Factor::value);
  }
}

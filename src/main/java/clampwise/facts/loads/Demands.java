package clampwise.facts.loads;

import clampwise.calc.Outcome.Result;
import clampwise.calc.statics.Demand;
import clampwise.calc.statics.LimitState;
import clampwise.calc.statics.Utilisation;
import clampwise.facts.layout.Attachment;
import clampwise.facts.loads.Shares.Share;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Forces of the attachments of a field in every combination, and what they use. */
final class Demands {

  private final FieldLoads loads;
  private final Shares shares;

  Demands(FieldLoads loads, Shares shares) {
    this.loads = loads;
    this.shares = shares;
  }

  /**
   * What one combination brings to an attachment.
   *
   * @param combination number of the combination
   * @param normalN force across the roof, positive away from it [N]
   * @param alongN force down the slope [N]
   */
  record Force(int combination, double normalN, double alongN) {}

  /** A force with the share of strength that it uses. */
  record Used(Force force, Utilisation utilisation) {}

  /**
   * The uplift, or pressure, that uses most of an attachment's strength; nothing if there is none.
   */
  <S extends LimitState> Optional<Used> worst(
      Attachment attachment, Strengths<S> strengths, boolean up) {
    return worst(shares.of(attachment), strengths, up);
  }

  /** The same of an attachment that carries these parts of modules. */
  <S extends LimitState> Optional<Used> worst(List<Share> own, Strengths<S> strengths, boolean up) {
    DoublePredicate counts = up ? normalN -> normalN > 0 : normalN -> normalN <= 0;
    Used worst = null;
    for (int k = 0; k < loads.standard().combinations().size(); k++) {
      Force force = force(own, k, up);
      if (loads.isKnown(loads.standard().combinations().get(k), up)
          && counts.test(force.normalN)
          && Utilisation.of(
                  new Demand<S>(force.normalN, force.alongN),
                  strengths.resistance(),
                  strengths.interaction())
              instanceof Result<Utilisation> used
          && (worst == null || used.value().together() > worst.utilisation.together())) {
        worst = new Used(force, used.value());
      }
    }
    return Optional.ofNullable(worst);
  }

  /** What each combination brings to an attachment, with wind away from the roof or toward it. */
  List<Force> all(Attachment attachment, boolean up) {
    List<Share> own = shares.of(attachment);
    return IntStream.range(0, loads.standard().combinations().size())
        .mapToObj(k -> force(own, k, up))
        .toList();
  }

  /** Force across the roof by tributary widths, positive away from it [N]. */
  double byWidthN(Attachment attachment, int combination, boolean up) {
    double sumN = 0;
    for (Share share : shares.of(attachment)) {
      ModuleLoad load = loads.of(share.module());
      sumN -= share.tributaryM2() * (up ? load.upPa() : load.downPa())[combination];
    }
    return sumN;
  }

  private Force force(List<Share> own, int k, boolean up) {
    double normalN = -sum(own, up ? ModuleLoad::upPa : ModuleLoad::downPa, k);
    double alongN = 0;
    for (Share share : own) {
      alongN += share.tributaryM2() * loads.of(share.module()).alongPa()[k];
    }
    return new Force(k, normalN, alongN);
  }

  private double sum(List<Share> own, Function<ModuleLoad, double[]> of, int k) {
    double sumN = 0;
    for (Share share : own) {
      sumN += share.areaM2() * of.apply(loads.of(share.module()))[k];
    }
    return sumN;
  }
}

package clampwise.facts.loads;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.combination.Combination;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.FieldLayout;
import java.util.List;

/**
 * A field whose loads are known.
 *
 * @param shares which part of which modules each attachment carries
 */
record LoadedField(FieldLoads loads, Shares shares) {

  static LoadedField of(FieldLoads loads) {
    return new LoadedField(loads, Shares.of(loads.site()));
  }

  FieldSite site() {
    return loads.site();
  }

  FieldLayout field() {
    return site().field();
  }

  List<Combination> combinations() {
    return loads.standard().combinations();
  }

  /** What each combination brings to an attachment with wind away from the roof. */
  Outcome<List<Demands.Force>> forces(Attachment attachment) {
    if (shares.isAlone(attachment)) {
      String reason = attachment.name() + " is the only clamp on a module edge, which tips";
      return new NotApplicable<>(reason);
    }
    return new Result<>(new Demands(loads, shares).all(attachment, true));
  }
}

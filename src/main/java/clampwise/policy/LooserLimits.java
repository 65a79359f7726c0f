package clampwise.policy;

import clampwise.catalogue.Limit;
import clampwise.finding.Finding;
import clampwise.finding.HouseRule;
import clampwise.finding.HouseRule.Words;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.units.QuantityPrint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** House limits by which more may pass than by the shipped ones, so that none of them is silent. */
final class LooserLimits {

  /** How limits are called of which less lets more pass. */
  private static final List<String> LEAST =
      List.of("-least", "-width", "-wide", "-narrow", "-distance", "-ridge");

  private static final String MOST = "-most";

  private LooserLimits() {}

  /** One finding for each such limit of a policy. */
  static List<Finding> of(Policy policy) {
    List<Finding> found = new ArrayList<>();
    Named<PolicyFile.HouseLimit> written =
        policy.file().map(PolicyFile::limits).orElse(Named.none());
    for (Named.Item<PolicyFile.HouseLimit> item : written.all()) {
      String key = item.name().value();
      Optional<Limit> house = Optional.ofNullable(policy.limits().byKey().get(key));
      Optional<Limit> shipped = Optional.ofNullable(policy.limits().replaced().get(key));
      if (house.isPresent() && shipped.isPresent() && letsPass(house.get(), shipped.get())) {
        found.add(finding(item, house.get(), shipped.get()));
      }
    }
    return found;
  }

  /** Where the name of a limit does not say which way is looser, any other value may be. */
  private static boolean letsPass(Limit house, Limit shipped) {
    if (house.key().endsWith(MOST)) {
      return house.si() > shipped.si();
    }
    boolean least = LEAST.stream().anyMatch(house.key()::endsWith);
    return least ? house.si() < shipped.si() : house.si() != shipped.si();
  }

  private static Finding finding(
      Named.Item<PolicyFile.HouseLimit> item, Limit house, Limit shipped) {
    String message =
        "the policy sets "
            + house.key()
            + " to "
            + QuantityPrint.text(house.si(), house.unit())
            + " in place of "
            + QuantityPrint.text(shipped.si(), shipped.unit())
            + ": "
            + item.value().reason();
    String remedy = "take it out of the policy to see what the shipped limit finds";
    return HouseRule.LIMIT_MAY_LET_MORE_PASS.found(
        Subject.of("policy", "limits").part(house.key()),
        item.name().at(),
        new Words(message, remedy));
  }
}

package clampwise.facts.bonding;

import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Text;
import clampwise.source.Span;
import java.util.Optional;

/**
 * A part that is used to bond.
 *
 * @param user what uses it
 * @param kind mid clamp, jumper or lug
 * @param name its name, if given
 * @param rated whether it is rated for bonding, if the part is known and says so
 * @param at where it was chosen, or would be
 */
record BondPart(Subject user, String kind, Optional<Text> name, Optional<Flag> rated, Span at) {

  /** Why it is not known whether the part bonds, if it is not. */
  Optional<String> doubt() {
    return rated.isPresent()
        ? Optional.empty()
        : Optional.of(name.map(this::unrated).orElse(none()));
  }

  private String unrated(Text part) {
    return "whether " + kind + " " + part + " is rated for bonding is not given";
  }

  private String none() {
    return "no " + kind + " is named for " + user;
  }
}

package clampwise.facts.bonding;

import clampwise.finding.Subject;
import clampwise.job.Flag;
import clampwise.job.Text;
import clampwise.job.Unreadable;
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
 * @param unreadable what of the job could not be read
 */
record BondPart(
    Subject user,
    String kind,
    Optional<Text> name,
    Optional<Flag> rated,
    Span at,
    Unreadable unreadable) {

  private static final String FIELD = "fields.";

  /** Why it is not known whether the part bonds, if it is not. */
  Optional<String> doubt() {
    return rated.isPresent()
        ? Optional.empty()
        : Optional.of(name.map(this::unrated).orElse(none()));
  }

  private String unrated(Text part) {
    String shelf = kind.replace(' ', '-') + "s";
    return unreadable.missing(
        "whether " + kind + " " + part + " is rated for bonding",
        "parts",
        shelf,
        part.value(),
        "bonding");
  }

  private String none() {
    String key = kind.replace(' ', '-');
    if (user.path().startsWith(FIELD)) {
      String field = user.path().substring(FIELD.length());
      String what = "the " + kind + " of field " + field;
      return unreadable.unwritten(
          "no " + kind + " is named for field " + field, what, "fields", field, key);
    }
    String what =
        user.path().substring(user.path().indexOf(Subject.SEPARATOR) + Subject.SEPARATOR.length());
    return unreadable.unwritten(
        "no part is named for the " + what, "the part of the " + what, "bonding", key);
  }
}

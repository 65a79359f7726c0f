package clampwise.facts.fire;

import clampwise.finding.Subject;
import clampwise.job.Choice;
import clampwise.job.Editions;
import clampwise.job.Fire.Exemption;
import clampwise.job.Fire.RuleSet;
import clampwise.job.Job;
import clampwise.job.Site;
import clampwise.job.Text;
import clampwise.units.Unit;
import java.util.Optional;

/** Asks whether the rule set is the one in force, and whether it is applied at all. */
final class AccessRules {

  private static final Subject EDITION = Access.subject("rules");
  private static final Subject EXEMPT = Access.subject("exempt");

  private final Access access;

  AccessRules(Access access) {
    this.access = access;
  }

  void ask() {
    exemption();
    edition();
  }

  private void exemption() {
    Optional<Choice<Exemption>> exempt = access.fire().exempt();
    if (access.isLost("exempt")) {
      access.missing(
          AccessExemption.class, EXEMPT, "why the access rules are not applied could not be read");
      return;
    }
    boolean waived = exempt.filter(why -> why.value() == Exemption.WAIVED).isPresent();
    access.add(
        new AccessExemption(
            EXEMPT,
            EXEMPT,
            exempt.map(Choice::at).orElseGet(access::at),
            Unit.NUMBER,
            access.rules().toString(),
            exempt.isPresent(),
            waived ? "the fire official waives them" : "the building is detached and not habitable",
            waived
                ? "put the fire official's letter into the package"
                : "say on the plan what the building is used for"));
  }

  private void edition() {
    Job job = access.layout().job();
    Optional<Text> code = job.site().flatMap(Site::codes).flatMap(Site.Codes::fire);
    Optional<String> known =
        code.flatMap(text -> Editions.of(RuleSet.values(), text.value())).map(Choice::word);
    if (known.isPresent()) {
      access.add(
          new FireEdition(
              EDITION, EDITION, access.at(), Unit.NUMBER, access.rules().toString(), known.get()));
    } else {
      String what = "the fire code in force at the site";
      String reason =
          code.map(text -> what + ", " + text + ", is no rule set known here")
              .orElseGet(() -> job.unreadable().missing(what, "site", "codes", "fire"));
      access.missing(FireEdition.class, EDITION, reason);
    }
  }
}

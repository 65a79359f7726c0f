package clampwise.facts.roof;

import clampwise.facts.layout.FieldLayout;
import clampwise.facts.layout.PlaneLayout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.RoofAttachment;
import clampwise.job.SeamClamp;
import clampwise.job.Tested;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.source.Span;
import java.util.List;

/**
 * A seam clamp or rib bracket of a field on the covering it sits on.
 *
 * @param cause the written name that would have to change
 * @param panelAt where a missing value of the covering would be written
 * @param partAt where a missing value of the part would be written
 */
record PartUse(
    PlaneLayout plane,
    Panel panel,
    FieldLayout field,
    Text name,
    RoofAttachment part,
    Subject cause,
    Span panelAt,
    Span partAt) {

  Subject subject() {
    return RoofSubjects.field(field).part("attachment " + name.value());
  }

  /** Says why something about the covering is not known. */
  String ofPanel(String what, String key) {
    return unreadable().missing(what, "panels", plane.panelName(), key);
  }

  /** Says why something about the part is not known. */
  String ofPart(String what, String key) {
    return unreadable().missing(what, "parts", shelf(), name.value(), key);
  }

  String shelf() {
    return part instanceof SeamClamp ? "seam-clamps" : "rib-brackets";
  }

  private Unreadable unreadable() {
    return plane.reading().unreadable();
  }

  /** Whether the part suits seam or rib and, as far as known, its profile. */
  boolean isMadeForIt() {
    return Profiles.suitsKind(part, panel) && Profiles.listed(part.profiles(), panel.profile());
  }

  /** The tests that hold for the profile of the covering. */
  List<Tested> testsOfProfile() {
    return part.tested().stream()
        .filter(row -> Profiles.listed(row.profiles(), panel.profile()))
        .toList();
  }

  /** The tests that hold for profile and metal of the covering, as far as those are known. */
  List<Tested> testsThatApply() {
    return testsOfProfile().stream()
        .filter(row -> panel.metal().map(m -> m.value() == row.metal().value()).orElse(true))
        .toList();
  }
}

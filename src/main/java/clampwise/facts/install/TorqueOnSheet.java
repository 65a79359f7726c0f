package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * Whether the sheet of the crew has a torque for a part.
 *
 * @param part kind and name of the part
 * @param stated whether it has one
 */
public record TorqueOnSheet(Subject subject, Span at, Unit shown, String part, boolean stated)
    implements Fact {

  /** A sheet is completed in one go. */
  @Override
  public Subject cause() {
    return SiteWork.INSTALL.part("torques");
  }
}

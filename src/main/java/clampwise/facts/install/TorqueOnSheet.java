package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.List;

/**
 * Whether the sheet of the crew has a torque for a part.
 *
 * @param part kind and name of the part
 * @param stated whether it has one
 * @param standIn which part is listed in place of this one, in words, if one is
 * @param inPlace the same, to go on with after a remedy
 * @param drawnAt where the drawing names the part, if there is such a one
 */
public record TorqueOnSheet(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    boolean stated,
    String standIn,
    String inPlace,
    List<Span> drawnAt)
    implements Fact {

  /** A sheet is completed in one go. */
  @Override
  public Subject cause() {
    return SiteWork.INSTALL.part("torques");
  }
}

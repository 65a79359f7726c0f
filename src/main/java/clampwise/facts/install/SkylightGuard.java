package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * A skylight or translucent panel, and whether it is guarded.
 *
 * @param opening its name on the plane
 * @param guarded whether it is
 */
public record SkylightGuard(Subject subject, Span at, Unit shown, String opening, boolean guarded)
    implements Fact {

  /** Skylights are guarded together. */
  @Override
  public Subject cause() {
    return SiteWork.INSTALL.part("skylights");
  }
}

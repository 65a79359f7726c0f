package clampwise.facts.install;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The tool that tightens set screws last.
 *
 * @param tool its name
 * @param kind what it is, in words
 * @param measures whether one reads or sets a torque on it
 */
public record SetScrewTool(
    Subject subject, Span at, Unit shown, String tool, String kind, boolean measures)
    implements Fact {}

package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * How the boot of a pipe goes with a panel that slides.
 *
 * @param obstruction its name
 * @param covering name of the covering
 * @param rigid whether the boot is rigid
 * @param slides whether the panel slides under it
 */
public record PipeBoot(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String obstruction,
    String covering,
    boolean rigid,
    boolean slides)
    implements Fact {}

package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Metal that rests on treated wood.
 *
 * @param wood what it is
 * @param preservative what it is treated with
 * @param metal the metal that rests on it
 * @param harmful whether what it is treated with eats this metal
 * @param barrier whether a membrane lies between
 */
public record WoodContact(
    Subject subject,
    Span at,
    Unit shown,
    String wood,
    String preservative,
    String metal,
    boolean harmful,
    boolean barrier,
    Optional<Limit> limitFrom)
    implements Fact {}

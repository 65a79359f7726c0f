package clampwise.facts.durability;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * How hot a module gets at the site even with all the air it can have.
 *
 * @param module module type
 * @param level what its listing allows, in words
 * @param openC 98th percentile in an open rack [°C]
 * @param hottestC temperature its listing allows [°C]
 */
public record OpenRackHeat(
    Subject subject,
    Span at,
    Unit shown,
    String module,
    String level,
    double openC,
    double hottestC,
    Optional<Limit> limitFrom)
    implements Fact {}

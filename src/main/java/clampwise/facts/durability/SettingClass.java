package clampwise.facts.durability;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * The stated class of the air, beside the mildest that its setting lets one expect.
 *
 * @param stated the stated class
 * @param statedRank its rank, 1 for C1 to 6 for CX
 * @param setting the setting
 * @param least the mildest class there
 * @param leastRank its rank
 */
public record SettingClass(
    Subject subject,
    Span at,
    Unit shown,
    String stated,
    int statedRank,
    String setting,
    String least,
    int leastRank)
    implements Fact {}

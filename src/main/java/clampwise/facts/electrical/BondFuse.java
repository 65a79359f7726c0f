package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The fuse that a bonding part was tested for, held against the largest of the modules.
 *
 * @param kind mid clamp, jumper or lug
 * @param part name of the part
 * @param ratedA fuse it was tested for [A]
 * @param module type of the modules
 * @param fuseA largest series fuse of the modules [A]
 * @param fitting parts that stand it, in words
 */
public record BondFuse(
    Subject subject,
    Span at,
    Unit shown,
    String kind,
    String part,
    double ratedA,
    String module,
    double fuseA,
    Optional<String> fitting)
    implements Fact {}

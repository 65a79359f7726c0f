package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a seam clamp or rib bracket is made for the seam or rib it sits on.
 *
 * @param kind seam clamp or rib bracket
 * @param covering name of the covering
 * @param profile how the covering is built, with its fold or profile where known
 * @param madeFor what the part is made for
 * @param fitting parts that would fit, if there are any
 */
public record ProfileFit(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String part,
    String kind,
    String covering,
    String profile,
    String madeFor,
    boolean madeForIt,
    Optional<String> fitting)
    implements Fact {}

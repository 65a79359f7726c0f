package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The two attachments of a seam that have the least room between them.
 *
 * @param first the one written first
 * @param second the one that comes too close to it
 * @param on seam, structural rib or crest with its number
 * @param pairs how many pairs of neighbours on that seam are too close
 * @param apartM distance between their centres along the seam [m]
 * @param leastM least distance: half of each body, or that of practice [m]
 * @param needs where the least distance comes from, in words
 */
public record AttachmentPair(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String first,
    String second,
    String on,
    int pairs,
    double apartM,
    double leastM,
    String needs,
    Optional<Limit> limitFrom)
    implements Fact {}

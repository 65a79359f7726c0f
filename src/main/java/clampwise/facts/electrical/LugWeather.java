package clampwise.facts.electrical;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * Whether a lug is listed for wet places.
 *
 * @param lug name of the lug
 * @param listed whether it is
 * @param fitting lugs that are, in words
 */
public record LugWeather(
    Subject subject, Span at, Unit shown, String lug, boolean listed, Optional<String> fitting)
    implements Fact {}

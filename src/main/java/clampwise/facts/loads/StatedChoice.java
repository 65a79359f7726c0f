package clampwise.facts.loads;

import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;

/**
 * What a job chooses where a load is open, beside what stands when nothing is chosen.
 *
 * @param key its key in the job
 * @param what what is chosen, in words
 * @param chosen as it is written
 * @param instead what stands when nothing is chosen
 * @param mild whether the choice can lower a load
 */
public record StatedChoice(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    String key,
    String what,
    String chosen,
    String instead,
    boolean mild)
    implements Fact {}

package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * A stated torque of a part whose maker states none.
 *
 * @param part kind and name of the part
 * @param statedNm torque on the sheet [N m]
 * @param leastNm least usual torque [N m]
 * @param mostNm largest usual torque [N m]
 * @param nearestNm the end of that range that is nearer [N m]
 */
public record UsualTorque(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    double statedNm,
    double leastNm,
    double mostNm,
    double nearestNm,
    Optional<Limit> limitFrom)
    implements Fact {}

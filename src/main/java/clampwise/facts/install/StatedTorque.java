package clampwise.facts.install;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Optional;

/**
 * The torque on the sheet of the crew beside the maker's.
 *
 * @param part kind and name of the part
 * @param statedNm torque on the sheet [N m]
 * @param makerNm torque the maker states [N m]
 * @param offShare difference over the maker's torque, without sign
 * @param mostShare largest difference
 */
public record StatedTorque(
    Subject subject,
    Span at,
    Unit shown,
    String part,
    double statedNm,
    double makerNm,
    double offShare,
    double mostShare,
    Optional<Limit> limitFrom)
    implements Fact {}

package clampwise.facts.movement;

import clampwise.catalogue.Limit;
import clampwise.facts.Fact;
import clampwise.finding.Subject;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/**
 * How far the frames of a column outgrow the roof at each joint, held against the joint's slack.
 *
 * @param clamp mid clamp in the joints
 * @param count modules of the column
 * @param temperatures between which temperatures they move, in words
 * @param lengthM length of the column with its joints [m]
 * @param movementM difference of frames and roof over that length [m]
 * @param jointM share of each joint [m]
 * @param slackM movement that a joint takes up [m]
 */
public record FrameJoint(
    Subject subject,
    Subject cause,
    Span at,
    Unit shown,
    Map<String, Unit> units,
    String field,
    String clamp,
    String covering,
    int count,
    String temperatures,
    double lengthM,
    double movementM,
    double jointM,
    double slackM,
    Optional<Limit> limitFrom)
    implements Fact {}

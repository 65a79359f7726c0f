package clampwise.finding;

/** What a finding is known by, whatever its numbers and lines are: the rule and the cause. */
public record FindingName(String rule, Subject cause) {}

package clampwise.finding;

/**
 * What a finding is known by, whatever its numbers and lines are.
 *
 * @param loadCase the load case that governs it; empty where no loads are compared
 */
public record FindingName(String rule, Subject cause, String loadCase) {}

package clampwise.finding;

/**
 * How far a rule got.
 *
 * @param rule id of the rule
 * @param met subjects that meet it
 * @param notMet subjects that do not
 * @param notChecked subjects that could not be judged
 */
public record Coverage(String rule, int met, int notMet, int notChecked) {}

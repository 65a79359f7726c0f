package clampwise.takeoff;

/**
 * A conductor by length.
 *
 * @param lengthM its length [m]
 * @param from where that length is from, in words
 */
public record Run(String what, double lengthM, String from) {}

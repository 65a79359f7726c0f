package clampwise.finding;

/**
 * What a limit rests on.
 *
 * @param key key into the references
 * @param detail clause, edition and how the number was obtained, as printed
 */
public record Basis(String key, String detail) {}

package clampwise.plan;

import java.util.List;

/**
 * Marks that belong together and can be hidden together.
 *
 * @param word short name in small letters, such as {@code modules}
 * @param drawn the marks, the lowest first
 */
public record Layer(String word, List<Drawn> drawn) {}

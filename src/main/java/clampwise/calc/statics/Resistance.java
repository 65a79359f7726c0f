package clampwise.calc.statics;

import java.util.Optional;

/**
 * What an attachment may take on this roof; what its data do not state is absent.
 *
 * @param <S> the limit state whose loads it may be compared with
 * @param up away from the roof
 * @param down toward the roof
 * @param slope along the seam
 */
public record Resistance<S extends LimitState>(
    Optional<Strength<S>> up, Optional<Strength<S>> down, Optional<Strength<S>> slope) {}

package clampwise.calc.statics;

/**
 * A force that a part may take.
 *
 * @param <S> the limit state whose loads it may be compared with
 * @param forceN force [N]
 */
@SuppressWarnings("UnusedTypeParameter") // it only keeps limit states apart
public record Strength<S extends LimitState>(double forceN) {}

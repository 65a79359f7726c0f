package clampwise.calc.statics;

/**
 * Force that one load combination brings to an attachment.
 *
 * @param <S> the limit state of the combination
 * @param normalN across the roof [N]; positive away from it, negative toward it
 * @param slopeN along the seam, down the slope [N]
 */
@SuppressWarnings("UnusedTypeParameter") // it only keeps limit states apart
public record Demand<S extends LimitState>(double normalN, double slopeN) {}

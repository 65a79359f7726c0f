package clampwise.calc.statics;

/**
 * On which side of a comparison the safety stands. Forces and strengths carry it as a type, so that
 * a service load cannot be held against a factored strength.
 */
public sealed interface LimitState {

  /** Allowable stress design: service loads against allowable loads. */
  non-sealed interface Asd extends LimitState {}

  /** Load and resistance factor design: factored loads against design strengths. */
  non-sealed interface Lrfd extends LimitState {}
}

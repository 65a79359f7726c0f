/** Electrical sizes: strings in the cold, grounding conductors, supports of cables. */
@org.jspecify.annotations.NullMarked
package clampwise.calc.electrical;

/** Shown work: each number with its symbol, formula, inputs, unit and source. */
@NullMarked
package clampwise.calc.trail;

import org.jspecify.annotations.NullMarked;

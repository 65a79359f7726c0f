/** Load combinations, with signs. */
@NullMarked
package clampwise.calc.combination;

import org.jspecify.annotations.NullMarked;

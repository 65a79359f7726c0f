/** Metal that grows with temperature, and the gap that keeps a module cool. */
@NullMarked
package clampwise.calc.thermal;

import org.jspecify.annotations.NullMarked;

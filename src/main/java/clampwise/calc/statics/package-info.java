/** Beams on supports, from a module's pressure to its clamps, from a seam's clamps to its clips. */
@NullMarked
package clampwise.calc.statics;

import org.jspecify.annotations.NullMarked;

/** Metals in the weather and beside each other. */
@NullMarked
package clampwise.calc.corrosion;

import org.jspecify.annotations.NullMarked;

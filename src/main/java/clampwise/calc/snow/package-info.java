/** Snow on roofs after ASCE 7-16 and 7-22. */
@NullMarked
package clampwise.calc.snow;

import org.jspecify.annotations.NullMarked;

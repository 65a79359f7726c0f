/** Wind pressures of ASCE 7 on roofs and on panels parallel to them, with shown work. */
@NullMarked
package clampwise.calc.wind;

import org.jspecify.annotations.NullMarked;

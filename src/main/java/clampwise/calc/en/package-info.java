/** Wind and snow on roofs after EN 1991-1-4 and EN 1991-1-3. */
@NullMarked
package clampwise.calc.en;

import org.jspecify.annotations.NullMarked;

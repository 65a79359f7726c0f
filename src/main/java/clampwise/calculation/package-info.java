/** The public calculations by name: what each needs, where it holds, and its shown work. */
@NullMarked
package clampwise.calculation;

import org.jspecify.annotations.NullMarked;

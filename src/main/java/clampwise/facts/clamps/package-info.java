/** Facts about clamps, frames and module edges. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.clamps;

/** Facts about the bonding of the frames. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.bonding;

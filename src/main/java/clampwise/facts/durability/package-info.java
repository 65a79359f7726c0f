/** Facts about metals, water, heat and the age of the roof. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.durability;

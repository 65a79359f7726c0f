/** Facts about the weight of an array and what it asks of the roof that was there before. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.weight;

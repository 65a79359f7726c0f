/** Questions about parts lists, crew time and freight. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.takeoff;

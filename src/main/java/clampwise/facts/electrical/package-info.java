/** Facts about strings, conductors and protection. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.electrical;

/** Questions about access to the roof in a fire, and about its fire class. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.fire;

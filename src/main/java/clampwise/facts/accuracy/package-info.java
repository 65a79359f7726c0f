/** Facts about how exactly modules are set: stacks of tolerances, squareness. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.accuracy;

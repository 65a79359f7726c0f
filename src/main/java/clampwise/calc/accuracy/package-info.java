/** How exactly modules are set: stacks of tolerances, squareness, order of work. */
@org.jspecify.annotations.NullMarked
package clampwise.calc.accuracy;

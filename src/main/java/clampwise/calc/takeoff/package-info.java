/** Counting for an order: spares, pallets, rails for comparison. */
@org.jspecify.annotations.NullMarked
package clampwise.calc.takeoff;

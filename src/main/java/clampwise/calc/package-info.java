/** Pure engineering calculations in SI. */
@org.jspecify.annotations.NullMarked
package clampwise.calc;

/** Reads rules that a company wrote for itself: checked, compiled at first use, kept compiled. */
@org.jspecify.annotations.NullMarked
package clampwise.rulebook.own;

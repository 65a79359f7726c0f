/**
 * Turns rule texts into classes: those that ship while the program is built, own ones at first use.
 */
@org.jspecify.annotations.NullMarked
package clampwise.rulebook.build;

/** Turns rule texts into classes while the program is built; no part of a run. */
@org.jspecify.annotations.NullMarked
package clampwise.rulebook.build;

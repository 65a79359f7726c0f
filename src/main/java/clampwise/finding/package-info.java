/** Findings, what was not checked, and the evidence they carry. */
@org.jspecify.annotations.NullMarked
package clampwise.finding;

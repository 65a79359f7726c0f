/**
 * Proof that a review finds what is there and nothing else: clean jobs, planted defects, changes
 * without effect.
 */
@org.jspecify.annotations.NullMarked
package clampwise.proof;

/**
 * What a repository of jobs lets pass: accepted deviations, known debts, comparison of revisions.
 */
@org.jspecify.annotations.NullMarked
package clampwise.gate;

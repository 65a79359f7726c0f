/** Job files in folders, what git ignores of them, and what changed since a revision. */
@org.jspecify.annotations.NullMarked
package clampwise.repository;

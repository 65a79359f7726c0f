/** Facts about the documents of a package: what is there, what it shows, whether it agrees. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.documents;

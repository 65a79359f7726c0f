/** Pages of the documentation, followed to the letter. */
@org.jspecify.annotations.NullMarked
package clampwise.docs;

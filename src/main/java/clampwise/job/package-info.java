/** What the designer wrote, as records whose values know their place in the file. */
@org.jspecify.annotations.NullMarked
package clampwise.job;

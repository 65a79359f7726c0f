/** One review, start to end: the public Java API. */
@org.jspecify.annotations.NullMarked
package clampwise.review;

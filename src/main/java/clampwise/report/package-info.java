/** One renderer a format. */
@org.jspecify.annotations.NullMarked
package clampwise.report;

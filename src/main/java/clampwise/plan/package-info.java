/** Plan drawings of a review: what is drawn where on a sheet, whatever writes it. */
@org.jspecify.annotations.NullMarked
package clampwise.plan;

/** Facts about what was measured on the roof and what is only assumed. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.survey;

/** Facts about roof, seams, attachments, zones and claims. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.roof;

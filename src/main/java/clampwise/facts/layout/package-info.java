/** The layout in space: planes, seams, zones, modules, lines, attachments. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.layout;

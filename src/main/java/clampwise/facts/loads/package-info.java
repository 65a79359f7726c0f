/** Wind and snow on each module, and what they bring to clamps, modules and zones. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.loads;

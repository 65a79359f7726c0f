/** Texts with positions: YAML and JSON nodes, spans, problems of reading. */
@org.jspecify.annotations.NullMarked
package clampwise.source;

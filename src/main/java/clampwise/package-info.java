/** Design review of rail-less solar layouts on metal roofs. */
@org.jspecify.annotations.NullMarked
package clampwise;

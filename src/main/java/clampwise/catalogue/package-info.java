/** Invented parts and the limits of codes and practice, as data. */
@org.jspecify.annotations.NullMarked
package clampwise.catalogue;

/** Text to SI and back: the only package that parses and prints units. */
@org.jspecify.annotations.NullMarked
package clampwise.units;

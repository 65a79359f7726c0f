/** What a layout takes: parts, lengths, mass, pallets, crew time, and rails to compare with. */
@org.jspecify.annotations.NullMarked
package clampwise.takeoff;

/** Facts about the work on the roof: torques, tools, steps, falls. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.install;

/** Facts about movement with temperature: panels on their clips, frames on the roof, joints. */
@org.jspecify.annotations.NullMarked
package clampwise.facts.movement;

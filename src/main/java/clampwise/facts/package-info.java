/** Derived facts: measured values side by side with their limits, ready for judgement. */
@org.jspecify.annotations.NullMarked
package clampwise.facts;

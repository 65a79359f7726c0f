/** Rules in, findings out: the only package that knows the rule engine. */
@org.jspecify.annotations.NullMarked
package clampwise.rulebook;

/** Commands: arguments, terminal, exit codes. */
@org.jspecify.annotations.NullMarked
package clampwise.cli;

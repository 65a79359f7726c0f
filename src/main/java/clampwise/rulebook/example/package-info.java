/** The examples on rule pages, which are the tests of the rules. */
@org.jspecify.annotations.NullMarked
package clampwise.rulebook.example;

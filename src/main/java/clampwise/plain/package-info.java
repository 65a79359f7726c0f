/**
 * Streams, collectors and orders without lambdas of the Java library, which a start would link one
 * by one: the build puts them in place of the library's (see {@code clampwise.packaging}).
 */
@NullMarked
package clampwise.plain;

import org.jspecify.annotations.NullMarked;

package clampwise;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a static method without parameters that reads data which ships with the program. The build
 * calls it once and puts code in its place that makes an equal value, so that no start has to read
 * and check the same data again.
 */
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.METHOD)
public @interface MadeByBuild {}

package clampwise.plain;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The static method takes the place of the Java library's method of the same name in the finished
 * program. It takes the same arguments, after the receiver if the other has one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
public @interface InsteadOf {

  /** The type of the Java library that declares the method. */
  Class<?> value();

  /** Whether the method belongs to the type, not to a value of it. */
  boolean isStatic() default false;
}

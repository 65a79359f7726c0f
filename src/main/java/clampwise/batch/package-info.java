/** Reviews of many jobs: on all cores, from a cache, in parts that are joined again. */
@org.jspecify.annotations.NullMarked
package clampwise.batch;

/**
 * Makes the runnable jar start faster; runs in the build only. Each lambda that is linked at run
 * time costs a cold start about a tenth of a millisecond, and a review uses a thousand of them;
 * ordinary classes out of the class-data archive cost a fraction.
 */
@NullMarked
package clampwise.packaging;

import org.jspecify.annotations.NullMarked;

/**
 * Makes the runnable jar start faster; runs in the build only. Each lambda that is linked at run
 * time costs a cold start about a tenth of a millisecond, and a review uses a thousand of them;
 * ordinary classes out of the class-data archive cost a fraction. Data that ships with the program
 * becomes code that makes it, because reading it again at each start took as long as the review.
 */
@NullMarked
package clampwise.packaging;

import org.jspecify.annotations.NullMarked;

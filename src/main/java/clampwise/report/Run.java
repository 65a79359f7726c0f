package clampwise.report;

import clampwise.review.Review;
import java.util.List;

/**
 * A run that is reported on.
 *
 * @param reviews the review of each job, in the order asked for
 * @param version version of this program
 */
public record Run(List<Review> reviews, String version) {}

package clampwise.review;

import clampwise.source.Problem;
import clampwise.takeoff.Quantities;
import java.util.List;
import java.util.Optional;

/**
 * The take-off of one job.
 *
 * @param file the job file as the user named it
 * @param title what the job is called
 * @param problems what could not be read
 * @param quantities what it takes; none where nothing of it could be read
 */
public record TakenOff(
    String file, String title, List<Problem> problems, Optional<Quantities> quantities) {}

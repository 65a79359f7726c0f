package clampwise.job;

import clampwise.job.Quantity.Length;
import java.util.List;
import java.util.Optional;

/** What was measured on the roof, by whom and when. */
public record Survey(
    @Doc("Role of who measured.") Optional<Text> by,
    @Doc("Day of the survey.") Optional<Day> on,
    @Doc("How far the eave is from square to the seams.")
        Optional<Survey.OutOfSquare> eaveOutOfSquare,
    @Doc("Facts of the covering that photos show, by key.") Optional<List<Text>> photos) {

  /** A deviation over a measured length. */
  public record OutOfSquare(
      @Doc("Deviation.") Length offset, @Doc("Length it was measured over.") Length over) {}
}

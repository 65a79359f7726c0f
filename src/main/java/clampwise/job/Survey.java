package clampwise.job;

import clampwise.job.Quantity.Length;
import java.util.Optional;

/** What was measured on the roof, by whom and when. */
public record Survey(
    @Doc("Role of who measured.") Optional<Text> by,
    @Doc("Date of the survey.") Optional<Text> on,
    @Doc("How far the eave is from square to the seams.")
        Optional<Survey.OutOfSquare> eaveOutOfSquare) {

  /** A deviation over a measured length. */
  public record OutOfSquare(
      @Doc("Deviation.") Length offset, @Doc("Length it was measured over.") Length over) {}
}

package clampwise.job;

import java.util.Optional;

/** Screws or bolts of a part. */
public record Screws(
    @Doc("Their metal.") Optional<Choice<SurfaceMetal>> metal,
    @Doc("Grade of stainless steel: A2 is 304, A4 is 316, F1 is 430.")
        Optional<Choice<Screws.Grade>> grade,
    @Doc("What seals under their heads.") Optional<Choice<Screws.Washer>> washer,
    @Doc("Where of the profile they go in.") Optional<Choice<Screws.Place>> in) {

  /** Grades of stainless steel, ISO 3506. */
  public enum Grade {
    F1,
    A2,
    A4
  }

  /** What seals under the head of a screw. */
  public enum Washer implements Choice.Spelt {
    EPDM,
    NEOPRENE,
    PLAIN,
    NONE;

    @Override
    public String word() {
      return this == EPDM ? "EPDM" : name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /** Part of a profile that screws go into. */
  public enum Place {
    CREST,
    FLANK,
    PAN
  }
}

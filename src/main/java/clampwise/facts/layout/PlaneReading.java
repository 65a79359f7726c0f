package clampwise.facts.layout;

import clampwise.job.Unreadable;
import java.util.stream.Stream;

/**
 * Says why something about a plane is not known: it is not given, or it is written but could not be
 * read, so that what is left of it would mislead.
 *
 * @param plane name of the plane
 * @param panel name of its covering
 * @param line what its seams, ribs or crests are called
 */
public record PlaneReading(Unreadable unreadable, String plane, String panel, LineWord line) {

  boolean isOutlineLost() {
    return isLost("size", "outline", "edges");
  }

  /** Seams are placed by the plane and by the pitch and minor ribs of its covering. */
  boolean areSeamsLost() {
    return isLost("seams")
        || Stream.of("pitch", "minor-ribs")
            .anyMatch(key -> unreadable.touches("panels", panel, key));
  }

  /** Whether end laps are written that could not be read. */
  public boolean areEndLapsLost() {
    return isLost("end-laps");
  }

  /** Why the outline is not known, where it is not. */
  public String outlineUnknown() {
    return "the size of plane " + plane + " " + verb(isOutlineLost(), "size");
  }

  /** Why the seams are not known, where they are not. */
  public String seamsUnknown() {
    return "where the "
        + line.many()
        + " of plane "
        + plane
        + " lie "
        + verb(areSeamsLost() || isOutlineLost(), "pitch");
  }

  /** Why the end laps are not known, where they are not. */
  public String endLapsUnknown() {
    return "where the end laps of plane " + plane + " lie " + verb(areEndLapsLost(), "end-laps");
  }

  private boolean isLost(String... keys) {
    return Stream.of(keys).anyMatch(key -> unreadable.touches("planes", plane, key));
  }

  private static String verb(boolean lost, String key) {
    return lost ? "could not be read" : "is not given (" + key + ")";
  }
}

package clampwise.review;

import java.util.List;

/** What every review says last, whatever it found. */
public final class Cautions {

  /** That a review approves nothing. */
  public static final String NO_APPROVAL =
      "This list is not an engineer's approval, a permit or a listing. The licensed engineer, the"
          + " licensed electrician, the roof maker and the authority having jurisdiction decide.";

  /** That a calculation approves nothing. */
  public static final String NO_APPROVAL_BY_NUMBERS =
      "These numbers are not an engineer's approval. Check inputs and sources; the licensed engineer"
          + " and the authority having jurisdiction decide.";

  private Cautions() {}

  /** The cautions for people on the roof, one sentence each. */
  public static List<String> onTheRoof() {
    return List.of(
        "Fall protection from the height that the rules of the country set for work at height (in"
            + " the United States 6 ft in construction and 4 ft in maintenance); skylights are fall"
            + " hazards.",
        "Lift modules by hoist, not by hand up a ladder.",
        "Modules are live in light; opening a disconnect does not make a string safe.",
        "Wet, frosted or painted metal is slippery.");
  }
}

package clampwise.facts.layout;

import clampwise.job.Panel;
import java.util.Optional;

/** What the lines are called that attachments sit on: seams, ribs or crests, by the covering. */
public enum LineWord {
  SEAM("seam"),
  RIB("rib"),
  CREST("crest");

  private final String one;

  LineWord(String one) {
    this.one = one;
  }

  /** The word for a covering; a seam where it is not known. */
  public static LineWord of(Optional<Panel> panel) {
    return panel.map(LineWord::of).orElse(SEAM);
  }

  private static LineWord of(Panel panel) {
    return switch (panel.kind().value()) {
      case STANDING_SEAM -> SEAM;
      case TRAPEZOIDAL -> RIB;
      case CORRUGATED -> CREST;
    };
  }

  /** One of them. */
  public String one() {
    return one;
  }

  /** Several of them. */
  public String many() {
    return one + "s";
  }
}

package clampwise.plan;

import java.util.Locale;

/**
 * What the marks of a drawing stand for, and how each is drawn. Line widths are mostly those of the
 * usual series of pens (0.13, 0.18, 0.25, 0.35, 0.5, 0.7 mm; common practice, no source); kinds
 * differ in width, dashes or hatching, so that a copy in black and white, or an eye that tells no
 * red from green, loses nothing.
 */
public enum Style {
  ZONE_ONE_UP("wind zone, next to the mildest", Pen.line("#8a97a3", 0.13)),
  ZONE_TWO_UP("wind zone, two grades up", Pen.line("#66727e", 0.13)),
  ZONE_THREE_UP("wind zone, three grades up", Pen.line("#66727e", 0.13)),
  ZONE_FOUR_UP("wind zone, four grades up or more", Pen.line("#3f4952", 0.18)),
  ZONE_BORDER("border of a wind zone", Pen.line("#3f4952", 0.18, 3.0, 1.0, 0.6, 1.0)),
  CLEAR_PATH("wide enough for a pathway", Pen.fill("#dcebe6")),
  SETBACK("setback that is asked for", Pen.line("#0b6e5a", 0.25, 2.0, 1.0)),
  ROOF("roof plane", Pen.line("", 0).over("#ffffff")),
  EAVE("eave", Pen.line("#111111", 0.7)),
  RIDGE("ridge", Pen.line("#111111", 0.7, 6.0, 1.2)),
  RAKE("rake", Pen.line("#111111", 0.5)),
  HIP("hip", Pen.line("#111111", 0.5, 4.0, 1.5)),
  VALLEY("valley", Pen.line("#111111", 0.5, 4.0, 1.0, 0.7, 1.0)),
  WALL("wall", Pen.line("#111111", 0.7, 1.2, 0.6)),
  EXPANSION_JOINT("expansion joint", Pen.line("#111111", 0.5, 0.6, 0.6)),
  STEP("step in the roof", Pen.line("#111111", 0.5, 2.0, 0.8, 2.0, 2.0)),
  END_LAP("end lap", Pen.line("#8a5a00", 0.18, 4.0, 0.6)),
  SUPPORT("purlin or clip line", Pen.line("#9a9a9a", 0.13, 5.0, 1.5, 0.5, 1.5)),
  OBSTACLE("on the roof", Pen.line("#111111", 0.35).over("#cfcfcf")),
  KEEP_CLEAR("to be kept clear", Pen.line("#111111", 0.18, 1.0, 0.8)),
  MODULE("module", Pen.line("#1d3a5f", 0.25).over("#eef3f9")),
  MODULES("modules", Pen.line("#1d3a5f", 0.05).over("#eef3f9")),
  SEAM("seam, rib or crest", Pen.line("#777777", 0.13)),
  CLAMP_LINE("line of attachments", Pen.line("#444444", 0.13, 2.5, 0.8)),
  CLAMP_ZONE("clamp zone of the module", Pen.line("#0b6e5a", 0.18).over("#bfe0d6")),
  ATTACHMENT_MID("attachment that holds two modules", Pen.fill("#111111")),
  ATTACHMENT_END("attachment at an end", Pen.line("#111111", 0.18).over("#ffffff")),
  ATTACHMENT_NONE("attachment that holds no module", Pen.line("#111111", 0.18)),
  BOND("bonded by clamps", Pen.line("#6a3d9a", 0.25, 0.5, 0.7)),
  JUMPER("jumper", Pen.line("#6a3d9a", 0.5)),
  LUG("lug to ground", Pen.line("#6a3d9a", 0.35).over("#ffffff")),
  ISLAND("frame that no lug reaches", Pen.line("#6a3d9a", 0.18)),
  ERROR_AREA("where an error shows", Pen.line("#b00020", 0.5)),
  WARNING_AREA("where a warning shows", Pen.line("#9a5b00", 0.5, 2.0, 0.8)),
  NOTE_AREA("where a note shows", Pen.line("#1b5e9b", 0.35, 0.5, 0.8)),
  ERROR_MARK("error, with its number", Pen.line("#b00020", 0.25).over("#b00020")),
  WARNING_MARK("warning, with its number", Pen.line("#9a5b00", 0.5).over("#ffffff")),
  NOTE_MARK("note, with its number", Pen.line("#1b5e9b", 0.25).over("#ffffff")),
  LEADER("leader", Pen.line("#111111", 0.13)),
  DIMENSION("dimension", Pen.line("#111111", 0.13)),
  FRAME("frame", Pen.line("#111111", 0.35)),
  NORTH("north", Pen.fill("#111111")),
  TEXT("text", Pen.fill("#111111")),
  SMALL_TEXT("small text", Pen.fill("#333333")),
  ZONE_TEXT("name of a wind zone", Pen.fill("#2c343b")),
  MODULE_TEXT("name of a module", Pen.fill("#1d3a5f")),
  HEADING("heading", Pen.fill("#111111")),
  TITLE("title", Pen.fill("#111111")),
  WHITE_TEXT("number on a dark mark", Pen.fill("#ffffff")),
  MARK_TEXT("number on a white mark", Pen.fill("#111111"));

  private final String meaning;
  private final Pen pen;

  Style(String meaning, Pen pen) {
    this.meaning = meaning;
    this.pen = pen;
  }

  /** What it says in a legend. */
  public String meaning() {
    return meaning;
  }

  /** How it is drawn. */
  public Pen pen() {
    return pen;
  }

  /** Its name in a style sheet. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Height of its letters [mm]. */
  public double letterMm() {
    return switch (this) {
      case TITLE -> 5;
      case HEADING -> 3.5;
      case ZONE_TEXT -> 3;
      case SMALL_TEXT, MODULE_TEXT -> 2;
      case WHITE_TEXT, MARK_TEXT -> 2.2;
      default -> 2.5;
    };
  }

  /** Whether its letters are bold. */
  public boolean isBold() {
    return switch (this) {
      case TITLE, HEADING, WHITE_TEXT, MARK_TEXT, ZONE_TEXT -> true;
      default -> false;
    };
  }
}

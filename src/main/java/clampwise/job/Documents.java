package clampwise.job;

import java.util.List;
import java.util.Optional;

/** The package of documents that is handed in for a permit. */
public record Documents(
    @Doc("Kind of project, which decides what belongs in the package.")
        Optional<Choice<Documents.Project>> project,
    @Doc("Day on which the package is handed in.") Optional<Day> handedIn,
    @Doc("Drawings, calculations, lists, letters and reports, by sheet number or name.")
        Named<Documents.Sheet> sheets,
    @Doc("Reviews that the package has been through.")
        Optional<List<Choice<Documents.Review>>> reviews) {

  /** Kind of project. */
  public enum Project {
    DWELLING,
    COMMERCIAL,
    EXPEDITED
  }

  /** A review by others. */
  public enum Review {
    FIRE,
    STRUCTURAL,
    ELECTRICAL,
    UTILITY
  }

  /** One document of the package. */
  public record Sheet(
      @Doc("What kind of document it is.") Choice<SheetKind> kind,
      @Doc("Revision on it.") Optional<Text> revision,
      @Doc("Date on it.") Optional<Day> on,
      @Doc("Module that it names.") Optional<Text> module,
      @Doc("What it shows or declares.") Optional<List<Choice<Shown>>> shows,
      @Doc("Whether a licensed engineer has sealed it.") Optional<Flag> sealed,
      @Doc("Last day on which it holds, for letters, reports and warranties.")
          Optional<Day> validUntil) {}

  /** What a document is. */
  public enum SheetKind {
    COVER_SHEET,
    ROOF_PLAN,
    ELEVATION,
    FRAMING_PLAN,
    ATTACHMENT_DETAIL,
    ATTACHMENT_SCHEDULE,
    CRITERIA_SHEET,
    WIND_ZONE_MAP,
    BONDING_DIAGRAM,
    STRING_MAP,
    ELECTRICAL_DIAGRAM,
    STRUCTURAL_CALCULATION,
    STRUCTURAL_LETTER,
    PARTS_LIST,
    TORQUE_SHEET,
    DATA_SHEET,
    MANUAL,
    LISTING_LETTER,
    FIRE_LETTER,
    TEST_REPORT,
    ROOF_WARRANTY_LETTER,
    MAINTENANCE_PLAN,
    OTHER
  }

  /** What a drawing shows or declares. */
  public enum Shown {
    UNITS,
    DATUM,
    NORTH,
    SCALE,
    SETBACKS,
    ROOF_TYPE,
    ROOF_EDGES,
    VENTS_AND_SKYLIGHTS,
    STREET_SIDE,
    CONDUIT_ROUTE,
    EQUIPMENT,
    FRAMING_SIZES,
    CONNECTIONS,
    ARRAY_WEIGHT,
    UPLIFT_PER_CONNECTOR,
    DRAINAGE,
    WEATHERPROOFING,
    MODULE_HEIGHT
  }
}

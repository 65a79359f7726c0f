package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Accepted.Kind;
import clampwise.finding.Basis;
import clampwise.finding.Comparison;
import clampwise.finding.Coverage;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.finding.Place;
import clampwise.finding.Severity;
import clampwise.finding.Subject;
import clampwise.review.Review;
import clampwise.source.Position;
import clampwise.source.Problem;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A review made by hand, with one of everything. */
public final class SampleReview {

  private SampleReview() {}

  /** Two errors, one of them at many places, a note, a problem and two missing inputs. */
  public static Review full() {
    return new Review(
        "barn/job.yaml",
        "Hay barn, south slope",
        "B",
        32,
        List.of(
            new Problem(
                at(12, 5), "unknown key 'heigth'", "a key of a panel", Optional.of("height"))),
        List.of(frame(), zone(16), pitch()),
        List.of(missing("clamp-on-wrong-substrate", "A"), missing("sheet-too-thin", "A")),
        List.of(
            new Coverage("clamp-outside-clamp-zone", 170, 16, 0),
            new Coverage("clamp-on-wrong-substrate", 0, 0, 1)),
        List.of(accepted(Kind.DEVIATION), accepted(Kind.DEBT)),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  /** A finding that somebody answers for. */
  private static Accepted accepted(Kind kind) {
    boolean debt = kind == Kind.DEBT;
    String reason = debt ? "recorded on 2026-02-03" : "the crew has shims of 2 mm for this row";
    return new Accepted(
        with(debt ? "row-off-seams" : "mid-clamp-shimmed", 2),
        kind,
        reason,
        debt ? "" : "roof engineer",
        debt ? "" : "2027-03-31",
        at(debt ? 40 : 2, 5));
  }

  /** A review of one finding with the message given. */
  public static Review saying(String message) {
    Finding sample = pitch();
    Finding finding =
        new Finding(
            sample.rule(),
            sample.severity(),
            sample.title(),
            message,
            message,
            message,
            sample.basis(),
            sample.cause(),
            sample.at(),
            sample.comparison(),
            sample.places(),
            Optional.empty(),
            Optional.empty());
    return of(finding);
  }

  /** A review that says nothing but these findings. */
  public static Review of(Finding... findings) {
    return new Review("job.yaml", "Shed", 32, List.of(), List.of(findings), List.of(), List.of());
  }

  /** Five findings, the third of which only follows from the second. */
  public static Review withConsequence() {
    Finding zone = zone(16);
    Finding pitch = pitch();
    return of(frame(), zone, pitch.following(zone.name()), with("a", 2), with("b", 3));
  }

  private static Finding with(String rule, int places) {
    Finding zone = zone(places);
    return new Finding(
        rule,
        Severity.WARNING,
        "Title of " + rule,
        "message of " + rule,
        zone.reason(),
        zone.remedy(),
        List.of(),
        zone.cause(),
        zone.at(),
        Optional.empty(),
        zone.places(),
        Optional.empty(),
        Optional.empty());
  }

  /** An error at one place. */
  public static Finding frame() {
    return new Finding(
        "frame-outside-mid-clamp-range",
        Severity.ERROR,
        "Frame height outside the mid clamp's range",
        "mid clamp MC-35 grips 33 mm to 37 mm; the frame of PV-108-30 is 30 mm",
        "A clamp outside its range bears on its edge or not at all, and its rating is void.",
        "use MC-30, which grips 28 mm to 32 mm",
        List.of(
            new Basis("ul-2703", "", "mounting of modules", "second-hand", "clamps"),
            new Basis("practice", "", "", "common practice, no source", "all frames")),
        Subject.of("fields.A", "mid clamp MC-35"),
        at(34, 16),
        Optional.of(new Comparison(0.030, 0.033, Unit.MILLIMETRE)),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  /** An error at many places. */
  public static Finding zone(int places) {
    return new Finding(
        "clamp-outside-clamp-zone",
        Severity.ERROR,
        "Clamp outside the module's clamp zone",
        "the clamp on seam 7 sits 81 mm from the corner of A.R1C3; the rated zone begins at 234 mm",
        "Outside the zone the module has no rating.",
        "begin the block at 9 ft 4 in: 12 of 12 modules comply",
        List.of(),
        Subject.of("fields.A", "block"),
        at(40, 12),
        Optional.of(new Comparison(0.081, 0.234, Unit.MILLIMETRE)),
        places(places),
        Optional.empty(),
        Optional.empty());
  }

  private static List<Place> places(int count) {
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Comparison numbers = new Comparison(0.081 + 0.001 * i, 0.234, Unit.MILLIMETRE);
      Subject subject = Subject.of("fields.A", "module R1C" + (i + 3), "lower edge");
      places.add(new Place(subject, at(40, 12), Optional.of(numbers)));
    }
    return places;
  }

  private static Finding pitch() {
    return new Finding(
        "roof-fact-assumed",
        Severity.NOTE,
        "A roof fact is marked as assumed",
        "the pitch of barn roof is assumed",
        "Seams drift from their nominal pitch.",
        "measure it over ten seams",
        List.of(),
        Subject.of("panels.barn roof", "pitch"),
        at(20, 5),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Optional.empty());
  }

  private static NotChecked missing(String rule, String field) {
    return new NotChecked(
        rule, Subject.of("fields." + field), "the substrate of barn roof is not given", at(18, 3));
  }

  private static Span at(int line, int column) {
    return new Span("barn/job.yaml", new Position(line, column), new Position(line, column + 4));
  }
}

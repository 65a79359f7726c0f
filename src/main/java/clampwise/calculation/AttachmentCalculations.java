package clampwise.calculation;

import static clampwise.units.Dimension.ANGLE;
import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.PRESSURE;

import clampwise.calc.Outcome;
import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamLoad;
import clampwise.calc.statics.PullOut;
import clampwise.calc.statics.SeamClips;
import clampwise.calc.statics.SlopeSum;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.catalogue.Tables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** From attachments to the roof: clips, fixed points, screws. */
final class AttachmentCalculations {

  private final Tables tables;

  AttachmentCalculations(Tables tables) {
    this.tables = tables;
  }

  List<Calculation> all() {
    return List.of(
        UtilisationCalculation.calculation(), seamToClips(), screwPullOut(), fixedPoint());
  }

  private static Calculation seamToClips() {
    return new Calculation(
        "seam-to-clips",
        "Clip loads under the attachments of a seam, against the roof's own even load",
        "constant stiffness of the seam; clips that do not sink; two clips or more",
        List.of(
            Input.list("clips", "places of the clips along the seam, in order", LENGTH),
            Input.of("from", "lower end of the seam; the first clip if left out", LENGTH)
                .orNothing(),
            Input.of("to", "upper end of the seam; the last clip if left out", LENGTH).orNothing(),
            Input.list("attachments", "places of the attachments along the seam", LENGTH),
            Input.list("forces", "force of each attachment, or one for all", FORCE),
            Input.of("pressure", "size of the roof's own pressure", PRESSURE, 1e-3),
            Input.of("pitch", "distance between seams", LENGTH, 1e-4),
            Input.of("clip-strength", "what a clip may take", FORCE, 1e-3).orNothing()),
        AttachmentCalculations::seamToClips);
  }

  private static Outcome<List<Term>> seamToClips(Given given, Work work) {
    double[] clips = given.list("clips");
    double fromM = given.find("from").orElse(clips[0]);
    double toM = given.find("to").orElse(clips[clips.length - 1]);
    Beam seam = new Beam(fromM, toM, clips);
    return Points.of(given, "forces", "attachments")
        .then(points -> clips(seam, points, given, work))
        .then(loads -> new Outcome.Result<>(withStrength(loads, given, work)));
  }

  private static Outcome<List<Term>> clips(
      Beam seam, List<BeamLoad.Point> points, Given given, Work work) {
    Term pressure = Term.pressure("p_r", "the roof's own pressure", given.number("pressure"));
    Term pitch = Term.length("e", "distance between seams", given.number("pitch"));
    double evenNPerM = pressure.si() * pitch.si();
    return seam.under(List.<BeamLoad>copyOf(points))
        .then(
            ok -> {
              work.write(
                  Term.lineLoad("w_r", "the roof's own load on a seam", evenNPerM),
                  "p_r*e",
                  Source.STATICS,
                  pressure,
                  pitch);
              return SeamClips.show(seam, points, evenNPerM, work);
            });
  }

  private static List<Term> withStrength(List<Term> clips, Given given, Work work) {
    Optional<Double> strengthN = given.find("clip-strength");
    if (strengthN.isEmpty()) {
      return clips;
    }
    List<Term> all = new ArrayList<>(clips);
    Term strength = Term.force("R_c", "strength of a clip", strengthN.get());
    all.add(SlopeSum.share(clips.get(0), strength, work));
    return all;
  }

  private Calculation screwPullOut() {
    Table table = tables.get("screw-pull-out");
    return new Calculation(
        "screw-pull-out",
        "Allowable pull-out of a screw from sheet, for service loads",
        table.source().validity(),
        List.of(
            Input.of("thickness", "base metal thickness, without coating", LENGTH, 1e-5, 0.01),
            Input.of("diameter", "outer diameter of the thread", LENGTH, 1e-4, 0.05),
            Input.of("tensile-strength", "tensile strength of the sheet", PRESSURE, 1e6, 2e9),
            Input.of("safety-factor", "safety factor", NUMBER, 1.0, 10.0)
                .unless(Plain.number(table.rows().get(0).number("safety-factor")))),
        (given, work) -> {
          PullOut screw =
              new PullOut(
                  given.number("thickness"),
                  given.number("diameter"),
                  given.number("tensile-strength"));
          double coefficient = table.rows().get(0).number("coefficient");
          double forceN =
              screw.show(coefficient, given.number("safety-factor"), table.source(), work).forceN();
          return new Outcome.Result<>(
              List.of(Term.force("R", "allowable pull-out of one screw", forceN)));
        });
  }

  private static Calculation fixedPoint() {
    return new Calculation(
        "fixed-point",
        "Down-slope force of a panel run at its fixed point",
        "floating clips carry nothing along the slope; loads of one combination",
        List.of(
            Input.of("slope", "slope of the roof", ANGLE, 0.0, Math.PI / 2),
            Input.of("attachments", "down-slope force of all attachments on the run", FORCE, 0.0),
            Input.of("panel-weight", "weight of the panel by its area", PRESSURE, 0.0),
            Input.of("run", "length of the panel run", LENGTH, 0.0),
            Input.of("pitch", "distance between seams", LENGTH, 1e-4),
            Input.of("snow", "snow on the plan area outside the array", PRESSURE, 0.0)
                .unless("0 Pa"),
            Input.of("snow-run", "length of the run outside the array", LENGTH, 0.0).unless("0 m"),
            Input.of("strength", "what the fixed point may take", FORCE, 1e-3).orNothing()),
        AttachmentCalculations::fixedPoint);
  }

  private static Outcome<List<Term>> fixedPoint(Given given, Work work) {
    Term slope = Term.angle("theta", "slope of the roof", given.number("slope"));
    Term pitch = Term.length("e", "distance between seams", given.number("pitch"));
    Term weight = Term.pressure("g_p", "weight of the panel", given.number("panel-weight"));
    Term run = Term.length("L", "length of the panel run", given.number("run"));
    Term snow = Term.pressure("s", "snow on the plan area", given.number("snow"));
    Term outside = Term.length("L_s", "length outside the array", given.number("snow-run"));
    double sine = Math.sin(slope.si());
    double panelN = weight.si() * run.si() * pitch.si() * sine;
    double snowN = snow.si() * outside.si() * pitch.si() * Math.cos(slope.si()) * sine;
    work.write(
        Term.force("E_p", "panel's own weight, down the slope", panelN),
        "g_p*L*e*sin(theta)",
        Source.STATICS,
        weight,
        run,
        pitch,
        slope);
    work.write(
        Term.force("E_w", "snow outside the array, down the slope", snowN),
        "s*cos(theta)*L_s*e*sin(theta)",
        Source.STATICS,
        snow,
        slope,
        outside,
        pitch);
    Term sum = SlopeSum.fixedPoint(given.number("attachments"), panelN, snowN, work);
    return new Outcome.Result<>(
        given
            .find("strength")
            .map(n -> Term.force("R_f", "strength of the fixed point", n))
            .map(strength -> List.of(sum, SlopeSum.share(sum, strength, work)))
            .orElse(List.of(sum)));
  }
}

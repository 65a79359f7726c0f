package clampwise.calculation;

import static clampwise.units.Dimension.FORCE;
import static clampwise.units.Dimension.LENGTH;
import static clampwise.units.Dimension.LINE_LOAD;
import static clampwise.units.Dimension.NUMBER;
import static clampwise.units.Dimension.PRESSURE;

import clampwise.calc.Outcome;
import clampwise.calc.statics.Beam;
import clampwise.calc.statics.BeamLoad;
import clampwise.calc.statics.BeamWork;
import clampwise.calc.statics.ModuleOnClamps;
import clampwise.calc.statics.SpacingAllowed;
import clampwise.calc.statics.TributaryLoad;
import clampwise.calc.statics.TwoClamps;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/** From a pressure to clamps: beams, tributary widths, allowed spacing. */
final class BeamCalculations {

  private static final String SPACED = "spacings and sizes of 0.1 mm and more";
  private static final double LEAST_M = 1e-4;
  private static final String FIRST_CLAMP = "left";

  private BeamCalculations() {}

  static List<Calculation> all() {
    return List.of(beamReactions(), twoClamps(), moduleToClamps(), tributary(), spacingAllowed());
  }

  private static Calculation beamReactions() {
    return new Calculation(
        "beam-reactions",
        "Reactions and moments of a beam on two or more supports, with overhangs",
        "constant stiffness; supports that do not sink, in order along the beam",
        List.of(
            Input.of("from", "left end of the beam", LENGTH).unless("0 m"),
            Input.of("to", "right end of the beam", LENGTH),
            Input.list("supports", "places of the supports, from left to right", LENGTH),
            Input.list("load", "even load toward the supports, or several", LINE_LOAD).orNothing(),
            Input.list("load-from", "where each even load starts; all along if left out", LENGTH)
                .orNothing(),
            Input.list("load-to", "where each even load ends", LENGTH).orNothing(),
            Input.list("forces", "forces toward the supports", FORCE).orNothing(),
            Input.list("force-places", "place of each force", LENGTH).orNothing()),
        BeamCalculations::beamReactions);
  }

  private static Outcome<List<Term>> beamReactions(Given given, Work work) {
    Beam beam = new Beam(given.number("from"), given.number("to"), given.list("supports"));
    return loads(beam, given).then(loads -> BeamWork.show(beam, loads, "", work));
  }

  private static Outcome<List<BeamLoad>> loads(Beam beam, Given given) {
    double[] even = given.list("load");
    double[] from = given.list("load-from");
    double[] to = given.list("load-to");
    boolean whole = from.length == 0 && to.length == 0;
    if (!whole && (from.length != even.length || to.length != even.length)) {
      return new Outcome.NotApplicable<>("load, load-from and load-to are not equally many");
    }
    List<BeamLoad> loads = new ArrayList<>();
    for (int i = 0; i < even.length; i++) {
      loads.add(
          new BeamLoad.Even(whole ? beam.fromM() : from[i], whole ? beam.toM() : to[i], even[i]));
    }
    return Points.of(given, "forces", "force-places")
        .then(
            points -> {
              loads.addAll(points);
              return loads.isEmpty()
                  ? new Outcome.NotApplicable<>("nothing loads the beam: give load or forces")
                  : new Outcome.Result<>(loads);
            });
  }

  private static Calculation twoClamps() {
    return new Calculation(
        "two-clamps",
        "Reactions of an edge on two clamps with overhangs, closed form",
        "even load; both clamps on the edge; " + SPACED,
        List.of(
            Input.of("edge", "length of the edge", LENGTH, LEAST_M),
            Input.of(FIRST_CLAMP, "left clamp, from the left corner", LENGTH, 0.0),
            Input.of("right", "right clamp, from the left corner", LENGTH, 0.0),
            Input.of("load", "load of the edge, toward the clamps", LINE_LOAD, 0.0)),
        (given, work) ->
            new TwoClamps(given.number("edge"), given.number(FIRST_CLAMP), given.number("right"))
                .show(given.number("load"), work));
  }

  private static Calculation moduleToClamps() {
    return new Calculation(
        "module-to-clamps",
        "Force of each clamp on a line, from the pressure on the modules",
        "even pressure; half to each supported edge; two clamps or more on the edge; no load shared"
            + " beyond the frame's own stiffness",
        List.of(
            Input.of("pressure", "size of the net pressure on the module", PRESSURE, 0.0),
            Input.of("edge", "length of the supported edge", LENGTH, LEAST_M),
            Input.of("depth", "distance between the supported edges", LENGTH, LEAST_M),
            Input.list("clamps", "clamps from the left corner, in order", LENGTH),
            Input.word("line", "end line (one module) or inner line (two)", "inner", "end")
                .unless("inner")),
        (given, work) ->
            new ModuleOnClamps(given.number("edge"), given.number("depth"), given.list("clamps"))
                .show(given.number("pressure"), isInner(given) ? 2 : 1, work));
  }

  private static boolean isInner(Given given) {
    return given.word("line").equals("inner");
  }

  private static Calculation tributary() {
    return new Calculation(
        "tributary",
        "Force of an attachment from its tributary area",
        "attachments evenly spaced; " + SPACED,
        List.of(
            Input.of("depth", "module up the slope", LENGTH, LEAST_M),
            Input.of("gap", "gap between rows", LENGTH, 0.0).unless("0 m"),
            Input.of("spacing", "spacing of the attachments along the line", LENGTH, LEAST_M),
            Input.of("pressure", "size of the net pressure", PRESSURE, 0.0),
            line()),
        (given, work) -> {
          TributaryLoad load =
              new TributaryLoad(
                  given.number("depth"), given.number("gap"), given.number("spacing"));
          double pressurePa = given.number("pressure");
          Term force =
              isInner(given) ? load.interior(pressurePa, work) : load.edge(pressurePa, work);
          return new Outcome.Result<>(List.of(force));
        });
  }

  private static Input line() {
    return Input.word(
            "line", "inner line (half of each row) or end line (half of one)", "inner", "end")
        .unless("inner");
  }

  private static Calculation spacingAllowed() {
    return new Calculation(
        "spacing-allowed",
        "Longest spacing along a line that a zone's load allows, as length and in seams",
        "pressure and strength of the same limit state; " + SPACED,
        List.of(
            Input.of("pressure", "size of the net pressure of the zone", PRESSURE, 1e-3),
            Input.of("depth", "module up the slope", LENGTH, LEAST_M),
            Input.of("gap", "gap between rows", LENGTH, 0.0).unless("0 m"),
            line(),
            Input.of("strength", "what one attachment may take", FORCE, 1e-3),
            Input.of("pitch", "distance between seams", LENGTH, LEAST_M),
            Input.of("continuity", "factor for frames that run over clamps", NUMBER, 1.0, 2.0)
                .unless("1")),
        BeamCalculations::spacingAllowed);
  }

  private static Outcome<List<Term>> spacingAllowed(Given given, Work work) {
    double depthM =
        isInner(given) ? given.number("depth") + given.number("gap") : given.number("depth") / 2;
    SpacingAllowed.Zone zone =
        new SpacingAllowed.Zone(given.number("pressure"), depthM, given.number("continuity"));
    SpacingAllowed allowed =
        SpacingAllowed.show(zone, given.number("strength"), given.number("pitch"), work);
    return new Outcome.Result<>(
        List.of(
            Term.length("s", "longest spacing along the line", allowed.lengthM()),
            Term.number("K", "attach at least at every so many seams", allowed.everySeams())));
  }
}

package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Work;
import java.util.Optional;

/** External pressure coefficients of components and cladding by figure and zone. */
public final class ExternalCoefficient {

  private ExternalCoefficient() {}

  /**
   * Coefficients (GC_p) of ASCE 7-16 and 7-22 for roofs: figures 30.3-2A to 30.3-2G, 30.3-5A and 5B
   * up to a height of 60 ft, 30.5-1 (7-16) and 30.4-1 (7-22) above it. Straight in the logarithm of
   * the effective wind area, constant outside the ends of a line. Hip roofs of 7-16 between figures
   * 2E and 2F by height over width, hip roofs of 7-22 above 27 degrees between 2F and 2G by slope.
   *
   * <p>Second-hand; figure 2C and the hip figures of 7-16 were read off graphs by one library;
   * figures 2H and 2I of 7-16 are not at hand. Overhangs are left out: panels parallel to a roof
   * stay within its edges, so that their coefficients are not used.
   *
   * <p>A parapet of 3 ft or more on figure 2A makes the positive coefficient of zones 2 and 3 that
   * of the wall (figure 30.3-1, from memory).
   *
   * @param patch zone name of the figure and effective wind area [m²]
   * @return both coefficients [-], or why there are none
   */
  public static Outcome<Coefficients> of(
      WindCode code, WindBuilding building, Patch patch, Work work) {
    if (!(patch.areaM2() > 0)) {
      return new NotApplicable<>("an effective wind area is above 0");
    }
    if (patch.zone().equals("overhang")) {
      return new NotApplicable<>(
          "overhang coefficients are left out: panels parallel to a roof stay within its edges");
    }
    return RoofFigure.of(code, building.roof())
        .then(figure -> known(code, figure))
        .then(figure -> byFigure(code, building, figure, new Asked(patch, work)));
  }

  private record Asked(Patch patch, Work work) {}

  private static Outcome<String> known(WindCode code, String figure) {
    Optional<Table.Row> row = code.editionTable("roof-figures").row("figure", figure);
    return row.filter(r -> !r.word("numbers").equals("known")).isPresent()
        ? new NotApplicable<>(
            "the numbers of figure "
                + figure
                + " of ASCE "
                + code.edition().label()
                + " are not at hand")
        : new Result<>(figure);
  }

  private static Outcome<Coefficients> byFigure(
      WindCode code, WindBuilding building, String figure, Asked asked) {
    Patch patch = asked.patch;
    return Blend.of(code, figure, building.roof())
        .then(
            blend -> {
              FigureLines lines = new FigureLines(code, blend, asked.work);
              return positive(lines, building, figure, patch)
                  .then(
                      positive ->
                          lines
                              .of(patch.zone(), patch, new Coefficients(0, 0).negativeTerm())
                              .then(up -> new Result<>(new Coefficients(positive, up))));
            });
  }

  private static Outcome<Double> positive(
      FigureLines lines, WindBuilding building, String figure, Patch patch) {
    return lines
        .parapetWall(building, figure, patch)
        .<Outcome<Double>>map(Result::new)
        .orElseGet(() -> lines.of("positive", patch, new Coefficients(0, 0).positiveTerm()));
  }
}

package clampwise.calc.wind;

import clampwise.calc.Outcome;
import clampwise.calc.Outcome.NotApplicable;
import clampwise.calc.Outcome.Result;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Table;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.Equalisation;

/** Pressure equalisation factor of panels parallel to the roof. */
public final class PanelEqualisation {

  private PanelEqualisation() {}

  /**
   * Pressure equalisation factor gamma_a of ASCE 7, figure 29.4-8: 0.8 up to 10 ft², straight in
   * the logarithm of the area to 0.4 from 100 ft² on, which is 1.2 - 0.4 log10 A. Second-hand; the
   * second line that 7-22 is said to have, for wide gaps and low panels, is left out because its
   * values are not certain. The end value 0.45 of one transcription can be chosen.
   *
   * @param patch effective wind area of the panel [m²]
   * @return gamma_a [-], or why there is none
   */
  public static Outcome<Double> of(WindCode code, Patch patch, Work work) {
    if (!(patch.areaM2() > 0)) {
      return new NotApplicable<>("an effective wind area is above 0");
    }
    boolean usual = code.choices().equalisation() == Equalisation.TO_0_40;
    Table table = code.table(usual ? "panel-equalisation" : "panel-equalisation-end-0.45");
    Curve curve = Curve.of(table.rows().get(0));
    Line line =
        curve.line(
            new PanelFactors(1, curve.at(patch.areaM2())).equalisationTerm(),
            patch.area(),
            code.cite(table),
            work.measure());
    String open = "the figure's end value is read as 0.40 or 0.45; 0.45 was chosen";
    return new Result<>(work.write(usual ? line : line.noting(open)));
  }
}

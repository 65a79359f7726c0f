package clampwise.calc.wind;

import clampwise.calc.Snap;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.WindChoices.ExposedReading;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import java.util.List;

/** Array edge factor: panels at an exposed edge of their array take more uplift. */
public final class ExposedEdge {

  static final String FOUR = "exposed-edge-four-heights";
  static final String TWO = "exposed-edge-two-heights";

  private final WindCode code;
  private final ArraySize size;
  private final Work work;

  private ExposedEdge(WindCode code, ArraySize size, Work work) {
    this.code = code;
    this.size = size;
    this.work = work;
  }

  /**
   * The edge factor of a panel for one side of its array.
   *
   * @param exposed whether that side is exposed
   * @param inStrip whether the panel reaches into the strip along it
   * @param factor array edge factor for uplift
   */
  public record EdgeFactor(boolean exposed, boolean inStrip, double factor) {}

  /**
   * Array edge factor gamma_E of ASCE 7, 29.4.4, for uplift: 1.5 on a panel that reaches into the
   * strip along an exposed side of its array, else 1. A side is exposed if the roof's edge is
   * further than 0.5 h and the next array or the next panel is further than X. 7-16 (from memory):
   * X is 4 h2 and at least 4 ft, strip 1.5 panel lengths. 7-22 is undecided between that and X and
   * strip of 2 h2 (second-hand): by default exposed by either, and the wider strip.
   *
   * @param side what lies beyond the side [m]
   * @param size height of the panels, their chord length and height h of the building [m]
   * @return whether it is exposed, and the factor [-]
   */
  public static EdgeFactor of(WindCode code, PanelSide side, ArraySize size, Work work) {
    return new ExposedEdge(code, size, work).of(side);
  }

  private EdgeFactor of(PanelSide side) {
    Reading reading = reading();
    boolean open = isBeyond(side.roofEdgeM(), reading.roofEdgeM);
    boolean alone =
        isBeyond(side.nextArrayM(), reading.nextM) || isBeyond(side.nextPanelM(), reading.nextM);
    boolean exposed = open && alone;
    boolean inStrip = Snap.m(side.insideM()) < Snap.m(reading.stripM);
    double factor = factor(exposed && inStrip ? "exposed" : "elsewhere");
    Term term = new PanelFactors(factor, 1).edgeTerm();
    Source source = code.cite(code.table("panel-edge-factor"));
    String found = exposed ? "exposed: " : "not exposed: ";
    String where = inStrip ? "; in the strip" : "; inside of it";
    work.write(Line.given(term, source, found + why(side, reading, open, alone) + where));
    return new EdgeFactor(exposed, inStrip, factor);
  }

  private double factor(String panel) {
    return code.table("panel-edge-factor").row("panel", panel).orElseThrow().number("factor");
  }

  private static boolean isBeyond(double distanceM, double leastM) {
    return Snap.m(distanceM) > Snap.m(leastM);
  }

  private String why(PanelSide side, Reading reading, boolean open, boolean alone) {
    String edge = open ? " further than " : " not further than ";
    String next = alone ? "no array or no panel within " : "array and panel within ";
    return "the roof's edge is "
        + text(side.roofEdgeM())
        + " away,"
        + edge
        + text(reading.roofEdgeM)
        + "; "
        + next
        + text(reading.nextM);
  }

  private String text(double lengthM) {
    return Double.isInfinite(lengthM) || !work.isRead()
        ? "far"
        : QuantityPrint.text(lengthM, work.measure().of(Dimension.LENGTH));
  }

  private record Reading(double roofEdgeM, double nextM, double stripM) {}

  private Reading reading() {
    ExposedReading chosen = code.choices().exposedEdge(code.edition());
    return switch (chosen) {
      case FOUR_HEIGHTS -> new Reading(roofEdge(FOUR), next(FOUR, "X"), strip(FOUR, "s"));
      case TWO_HEIGHTS -> new Reading(roofEdge(TWO), next(TWO, "X"), strip(TWO, "s"));
      case SEVERE -> severe();
    };
  }

  private Reading severe() {
    double roofEdgeM = roofEdge(FOUR);
    Term four = Term.length("X_4", "least free distance, first reading", next(FOUR, "X_4"));
    Term two = Term.length("X_2", "least free distance, second reading", next(TWO, "X_2"));
    Term wide = Term.length("s_4", "width of the strip, first reading", strip(FOUR, "s_4"));
    Term narrow = Term.length("s_2", "width of the strip, second reading", strip(TWO, "s_2"));
    double nextM = Math.min(four.si(), two.si());
    double stripM = Math.max(wide.si(), narrow.si());
    Source source = code.cite(code.table(TWO));
    String open = "open between two readings of the standard: the severe side is taken";
    Term x = Term.length("X", "least free distance beyond the side", nextM);
    Term s = Term.length("s", "width of the strip of raised uplift", stripM);
    work.write(new Line(x, "min(X_4, X_2)", List.of(four, two), source, open));
    work.write(new Line(s, "max(s_4, s_2)", List.of(wide, narrow), source, open));
    return new Reading(roofEdgeM, nextM, stripM);
  }

  private double roofEdge(String key) {
    double share = code.number(key, "share-of-height");
    return work.write(
        Term.length("e_min", "least distance to the roof's edge", share * size.buildingHeightM()),
        number(share) + " * h",
        code.cite(code.table(key)),
        Term.length("h", "height of the building", size.buildingHeightM()));
  }

  private double next(String key, String symbol) {
    double heights = code.number(key, "heights");
    double leastM = code.number(key, "least-distance");
    double nextM = Math.max(heights * size.topHeightM(), leastM);
    return work.write(
        Term.length(symbol, "least free distance beyond the side", nextM),
        "max(" + number(heights) + " * h_2, X_min)",
        code.cite(code.table(key)),
        Term.length("h_2", "height of the panels above the roof", size.topHeightM()),
        Term.length("X_min", "least free distance", leastM));
  }

  private double strip(String key, String symbol) {
    double lengths = code.number(key, "strip-lengths");
    double heights = code.number(key, "strip-heights");
    double stripM = lengths * size.panelLengthM() + heights * size.topHeightM();
    boolean byLength = heights == 0;
    return work.write(
        Term.length(symbol, "width of the strip of raised uplift", stripM),
        byLength ? number(lengths) + " * L_p" : number(heights) + " * h_2",
        code.cite(code.table(key)),
        byLength
            ? Term.length("L_p", "chord length of a panel", size.panelLengthM())
            : Term.length("h_2", "height of the panels above the roof", size.topHeightM()));
  }

  private static String number(double value) {
    return QuantityPrint.trimmed(value, 6);
  }
}

package clampwise.calc.wind;

import clampwise.calc.Snap;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Measure;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.calc.wind.PanelLimits.Bound;
import clampwise.units.Dimension;
import clampwise.units.QuantityPrint;
import clampwise.units.Unit;
import clampwise.units.Units;
import java.util.List;
import java.util.Optional;

/** Conditions under which the method for panels parallel to the roof holds. */
public final class PanelConditions {

  private static final double ANGLE_NOISE_RAD = 1e-9;

  private final WindCode code;
  private final PanelSetup setup;
  private final Work work;

  private PanelConditions(WindCode code, PanelSetup setup, Work work) {
    this.code = code;
    this.setup = setup;
    this.work = work;
  }

  /**
   * Each condition of ASCE 7, 29.4.4, on its own: an enclosed or partially enclosed building, tilt
   * at most 2 degrees, upper side at most 10 in above the roof, gaps of at least 0.25 in at most
   * 6.7 ft apart (from memory), and at least twice the height h2 from roof edges, gable and hip
   * ridges (from memory). Limits are included.
   *
   * @return the answers, in a fixed order
   */
  public static List<PanelCondition> of(
      WindCode code, Enclosure enclosure, PanelSetup setup, Work work) {
    PanelConditions conditions = new PanelConditions(code, setup, work);
    return List.of(
        conditions.enclosure(enclosure),
        conditions.tilt(),
        conditions.height(),
        conditions.gap(),
        conditions.gapSpacing(),
        conditions.edge());
  }

  private PanelCondition enclosure(Enclosure enclosure) {
    boolean met = enclosure == Enclosure.ENCLOSED || enclosure == Enclosure.PARTIALLY_ENCLOSED;
    String words = enclosure.word().replace('-', ' ');
    return PanelCondition.of(
        "enclosure",
        met,
        "the building is " + words + (met ? "" : ", not enclosed or partially enclosed"));
  }

  private PanelCondition tilt() {
    Bound most = code.limits().tilt();
    return setup
        .tiltRad()
        .map(
            tiltRad -> {
              boolean met = Math.abs(tiltRad) <= most.si() + ANGLE_NOISE_RAD;
              Term tilt = Term.angle("tilt", "slope between panel and roof", tiltRad);
              return write("tilt", tilt, new Test(met, "at most", most), Units.DEGREE);
            })
        .orElseGet(() -> PanelCondition.notGiven("tilt", "the slope between panel and roof"));
  }

  private PanelCondition height() {
    return most(
        "height",
        setup.topHeightM().map(m -> Term.length("h_2", "height of the panels above the roof", m)),
        code.limits().height(),
        "the height of the panels above the roof");
  }

  private PanelCondition gap() {
    if (setup.gapM().isEmpty() && setup.freeM().isPresent()) {
      return alone(setup.freeM().get());
    }
    Optional<Term> gap = setup.gapM().map(m -> Term.length("gap", "gap between panels", m));
    return least("gap", gap, code.limits().gap(), "the gap between panels");
  }

  /** A panel on its own has no gap to measure; the distance is that within which one was sought. */
  private PanelCondition alone(double freeM) {
    Bound least = code.limits().gap();
    String searched = QuantityPrint.text(freeM, work.measure().of(Dimension.LENGTH));
    String none = "no other panel stands within " + searched + ", and there is no gap to measure";
    work.write(
        Line.given(
            Term.length("d_seen", "distance looked around a panel on its own", freeM),
            code.cite(least.source()),
            "met: " + none));
    return PanelCondition.of("gap", freeM >= least.si(), none);
  }

  private PanelCondition gapSpacing() {
    return most(
        "gap-spacing",
        setup.gapSpacingM().map(m -> Term.length("s_gap", "distance from gap to gap", m)),
        code.limits().gapSpacing(),
        "the distance from gap to gap");
  }

  private PanelCondition edge() {
    Optional<Term> edge =
        setup
            .edgeDistanceM()
            .map(m -> Term.length("d_edge", "distance of the array from the roof's edges", m));
    return setup
        .topHeightM()
        .map(
            heightM ->
                least("edge-distance", edge, edgeBound(heightM), "the distance from roof edges"))
        .orElseGet(
            () ->
                PanelCondition.notGiven(
                    "edge-distance", "the height of the panels above the roof"));
  }

  private Bound edgeBound(double heightM) {
    Bound heights = code.limits().edgeHeights();
    Source source = code.cite(heights.source());
    double leastM = heights.si() * heightM;
    work.write(
        Term.length("d_min", "least distance from the roof's edges", leastM),
        QuantityPrint.trimmed(heights.si(), 4) + " * h_2",
        source,
        Term.length("h_2", "height of the panels above the roof", heightM));
    return new Bound(leastM, heights.source());
  }

  private record Test(boolean met, String words, Bound bound) {}

  private PanelCondition most(String name, Optional<Term> term, Bound most, String what) {
    return term.map(
            found -> {
              boolean met = Snap.m(found.si()) <= Snap.m(most.si());
              return write(name, found, new Test(met, "at most", most), small());
            })
        .orElseGet(() -> PanelCondition.notGiven(name, what));
  }

  private PanelCondition least(String name, Optional<Term> term, Bound least, String what) {
    return term.map(
            found -> {
              boolean met = Snap.m(found.si()) >= Snap.m(least.si());
              return write(name, found, new Test(met, "at least", least), small());
            })
        .orElseGet(() -> PanelCondition.notGiven(name, what));
  }

  private PanelCondition write(String name, Term term, Test test, Unit unit) {
    QuantityPrint.Pair texts = QuantityPrint.pair(term.si(), test.bound.si(), unit);
    String limit = test.words + " " + texts.second();
    String verdict = test.met ? "met: " : "not met: ";
    work.write(Line.given(term, code.cite(test.bound.source()), verdict + limit));
    String sentence = "the " + term.meaning() + " is " + texts.first();
    return PanelCondition.of(name, test.met, sentence + (test.met ? ", " : ", not ") + limit);
  }

  private Unit small() {
    return work.measure() == Measure.METRIC ? Unit.MILLIMETRE : Unit.INCH;
  }
}

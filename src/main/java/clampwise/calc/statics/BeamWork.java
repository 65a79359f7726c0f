package clampwise.calc.statics;

import clampwise.calc.Outcome;
import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import java.util.ArrayList;
import java.util.List;

/**
 * The shown work of a beam. Moments over inner supports are found together; each is printed with
 * the three-moment equation that ties it to its neighbours, so that it can be checked by hand.
 */
public final class BeamWork {

  private static final Source SOURCE =
      new Source("statics", "", "three-moment equation", "worked out", "constant stiffness");

  private final BeamForces forces;
  private final Bays bays;
  private final List<BayFormulas> formulas = new ArrayList<>();
  private final int supports;
  private final Work work;
  private final List<Term> moments = new ArrayList<>();
  private final List<Term> heldLeft = new ArrayList<>();
  private final List<Term> heldRight = new ArrayList<>();

  private final String mark;

  private BeamWork(Bays bays, LoadSymbols symbols, String mark, Work work) {
    this.mark = mark;
    this.bays = bays;
    this.forces = bays.forces();
    this.supports = forces.reactionsN().length;
    this.work = work;
    for (int i = 0; i <= supports; i++) {
      formulas.add(new BayFormulas(bays.bay(i), length(i), symbols));
    }
  }

  /**
   * Reactions and moments of a beam, written into the work.
   *
   * @param loads loads toward the supports
   * @param mark what stands behind every symbol, such as {@code _e}; empty for a single beam
   * @return the reactions [N], from left to right
   */
  public static Outcome<List<Term>> show(Beam beam, List<BeamLoad> loads, String mark, Work work) {
    return beam.under(loads).then(ok -> shown(beam, loads, mark, work));
  }

  private static Outcome<List<Term>> shown(
      Beam beam, List<BeamLoad> loads, String mark, Work work) {
    LoadSymbols symbols = new LoadSymbols(loads, mark);
    BeamWork shown = new BeamWork(new Bays(beam, loads), symbols, mark, work);
    symbols.even().forEach(term -> work.given(term, Source.STATICS));
    return new Outcome.Result<>(shown.lines());
  }

  private Term length(int bay) {
    boolean over = bay == 0 || bay == supports;
    String meaning = over ? "overhang" : "span " + bay;
    return Term.length("L_" + bay, meaning, bays.bay(bay).lengthM());
  }

  private List<Term> lines() {
    for (int i = 1; i <= supports; i++) {
      String meaning = "moment over support " + i;
      moments.add(Term.moment("M_" + i + mark, meaning, forces.supportMomentsNm()[i - 1]));
    }
    if (supports > 2) {
      for (int i = 1; i < supports; i++) {
        held(i);
      }
    }
    overhang(1, formulas.get(0).aboutRight());
    for (int i = 2; i < supports; i++) {
      threeMoments(i);
    }
    overhang(supports, formulas.get(supports).aboutLeft());
    List<Term> reactions = new ArrayList<>();
    for (int i = 1; i <= supports; i++) {
      reactions.add(reaction(i));
    }
    for (int i = 1; i < supports; i++) {
      greatest(i);
    }
    return reactions;
  }

  /** Moments at the ends of a span if they were held against turning. */
  private void held(int i) {
    BayFormulas span = formulas.get(i);
    String meaning = "moment at the ends of span " + i + " if held against turning";
    if (span.isEven()) {
      Term both = Term.moment("F_" + i + mark, meaning, bays.bay(i).heldLeftNm());
      heldLeft.add(write(both, span.heldLeft()));
      heldRight.add(both);
    } else {
      Term left = Term.moment("F_" + i + "a" + mark, meaning + ", left", bays.bay(i).heldLeftNm());
      heldLeft.add(write(left, span.heldLeft()));
      Term right =
          Term.moment("F_" + i + "b" + mark, meaning + ", right", bays.bay(i).heldRightNm());
      heldRight.add(write(right, span.heldRight()));
    }
  }

  private void overhang(int support, Expression about) {
    Expression negative = new Expression().plus(about, "*(-1)");
    write(moments.get(support - 1), negative);
  }

  private void threeMoments(int i) {
    Term before = formulas.get(i - 1).length();
    Term after = formulas.get(i).length();
    Expression sum =
        new Expression()
            .add("-($1*($2+2*$3)", before, heldLeft.get(i - 2), heldRight.get(i - 2))
            .add("+$1*(2*$2+$3)", after, heldLeft.get(i - 1), heldRight.get(i - 1))
            .add("+$1*$2+$3*$4", moments.get(i - 2), before, moments.get(i), after)
            .add(")/(2*($1+$2))", before, after);
    write(moments.get(i - 1), sum);
  }

  private Term reaction(int i) {
    Expression sum = new Expression();
    Term here = moments.get(i - 1);
    if (i == 1) {
      sum.plus(formulas.get(0).total(), "");
    } else {
      BayFormulas before = formulas.get(i - 1);
      sum.plus(before.aboutLeft(), "/$1", before.length());
      sum.plus("($1-$2)/$3", moments.get(i - 2), here, before.length());
    }
    if (i == supports) {
      sum.plus(formulas.get(supports).total(), "");
    } else {
      BayFormulas after = formulas.get(i);
      sum.plus(after.aboutRight(), "/$1", after.length());
      sum.plus("($1-$2)/$3", moments.get(i), here, after.length());
    }
    double forceN = forces.reactionsN()[i - 1];
    String prying = forceN < 0 ? "The support has to pull: prying." : "";
    Term result = Term.force("R_" + i + mark, "reaction of support " + i, forceN);
    work.write(new Line(result, sum.text(), sum.terms(), SOURCE, prying));
    return result;
  }

  private void greatest(int i) {
    Term left = moments.get(i - 1);
    Term right = moments.get(i);
    MomentWalk walk = bays.bay(i).walk(left.si(), right.si());
    String symbol = "M_" + i + "_" + (i + 1) + mark;
    Term result =
        Term.moment(symbol, "greatest moment of span " + i, forces.spanMomentsNm()[i - 1]);
    if (walk.placeM() == 0 || right.si() >= walk.greatestNm()) {
      write(result, new Expression().add("max($1,$2)", left, right));
      return;
    }
    BayFormulas span = formulas.get(i);
    Term place = Term.length("z_" + i + mark, "its place from support " + i, walk.placeM());
    Expression sum = new Expression().add("$1", left);
    sum.plus(span.aboutRight(), "*$1/$2", place, span.length());
    sum.plus("($1-$2)*$3/$4", right, left, place, span.length());
    sum.plus(span.before(place), "*(-1)");
    write(result, sum);
  }

  private Term write(Term result, Expression formula) {
    String text = formula.isEmpty() ? "0" : formula.text();
    work.write(new Line(result, text, formula.terms(), SOURCE, ""));
    return result;
  }
}

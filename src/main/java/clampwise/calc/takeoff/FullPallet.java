package clampwise.calc.takeoff;

import clampwise.calc.trail.Line;
import clampwise.calc.trail.Source;
import clampwise.calc.trail.Term;
import clampwise.calc.trail.Work;
import clampwise.units.Dimension;

/** Pallets of modules: how many, and what a full one weighs. */
public final class FullPallet {

  private FullPallet() {}

  /**
   * Pallets that modules fill: the next whole number from n / k.
   *
   * @param modules modules of one type
   * @param inEach modules on a pallet; 1 or more
   * @return pallets, the last one in part
   */
  public static Term count(Term modules, Term inEach, Work work) {
    Term share = Term.number("q", "full pallets", modules.si() / inEach.si());
    work.write(share, modules.symbol() + "/" + inEach.symbol(), Source.STATICS, modules, inEach);
    double whole = WholeNumbers.up(share.si());
    Term pallets = Term.number("P", "pallets", whole);
    work.write(Line.given(pallets, Source.STATICS, "The next whole number from q."));
    return pallets;
  }

  /**
   * Mass of a full pallet, k m + m_0.
   *
   * @param inEach modules on it
   * @param module mass of a module [kg]
   * @param empty mass of the empty pallet [kg]
   * @param from where that mass is from
   * @return [kg]
   */
  public static Term mass(Term inEach, Term module, Term empty, Source from, Work work) {
    work.given(empty, from);
    double massKg = inEach.si() * module.si() + empty.si();
    Term full = new Term("m_p", "mass of a full pallet", massKg, Dimension.MASS);
    String formula = inEach.symbol() + "*" + module.symbol() + " + " + empty.symbol();
    work.write(full, formula, Source.STATICS, inEach, module, empty);
    return full;
  }
}

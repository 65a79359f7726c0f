package clampwise.calc.statics;

import clampwise.calc.trail.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives each load of a beam its symbol: even loads of one size share one. */
final class LoadSymbols {

  private final Map<Double, Term> even = new LinkedHashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();

  private final String mark;

  /** Symbols for these loads, each with a mark behind. */
  LoadSymbols(List<BeamLoad> loads, String mark) {
    this.mark = mark;
    List<Double> sizes = new ArrayList<>();
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Even e && !sizes.contains(e.loadNPerM())) {
        sizes.add(e.loadNPerM());
      }
    }
    for (double size : sizes) {
      String symbol = sizes.size() == 1 ? "w" : "w_" + (even.size() + 1);
      even.put(size, Term.lineLoad(symbol + mark, "even load", size));
    }
  }

  /** All even loads. */
  List<Term> even() {
    return List.copyOf(even.values());
  }

  Term even(BeamLoad.Even load) {
    Term found = even.get(load.loadNPerM());
    if (found == null) {
      throw new IllegalArgumentException("a load that is not on the beam");
    }
    return found;
  }

  Term force(BeamLoad.Point load) {
    return Term.force("P_" + next("P") + mark, "force", load.forceN());
  }

  /** A place with the next free number. */
  Term place(String letter, double m) {
    return Term.length(
        letter + "_" + next(letter) + mark, "place from the left end of its span", m);
  }

  private int next(String letter) {
    return counts.merge(letter, 1, Integer::sum);
  }
}

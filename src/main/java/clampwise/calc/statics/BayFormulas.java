package clampwise.calc.statics;

import clampwise.calc.trail.Term;
import java.util.List;

/** The loads of one bay as formulas, in the symbols of shown work. */
final class BayFormulas {

  /** Loads with their symbols; places are measured from the bay's left end. */
  private sealed interface Named {

    /** An even load over the whole bay. */
    record Whole(Term load) implements Named {}

    /** An even load over a part of the bay. */
    record Part(Term load, Term from, Term to) implements Named {}

    /** A force. */
    record Force(Term force, Term at) implements Named {}
  }

  private final Term length;
  private final List<Named> loads;

  BayFormulas(Bay bay, Term length, LoadSymbols symbols) {
    this.length = length;
    this.loads = bay.loads().stream().map(load -> named(load, bay, symbols)).toList();
  }

  private static Named named(BeamLoad load, Bay bay, LoadSymbols symbols) {
    if (load instanceof BeamLoad.Point point) {
      return new Named.Force(symbols.force(point), symbols.place("x", point.atM()));
    }
    BeamLoad.Even even = (BeamLoad.Even) load;
    Term w = symbols.even(even);
    boolean whole = even.fromM() == 0 && even.toM() == bay.lengthM();
    return whole
        ? new Named.Whole(w)
        : new Named.Part(w, symbols.place("u", even.fromM()), symbols.place("v", even.toM()));
  }

  Term length() {
    return length;
  }

  /** Whether the moments at held ends are the same at both ends. */
  boolean isEven() {
    return loads.stream().allMatch(Named.Whole.class::isInstance);
  }

  Expression total() {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2", whole.load, length);
      } else if (load instanceof Named.Part part) {
        sum.plus("$1*($3-$2)", part.load, part.from, part.to);
      } else {
        sum.plus("$1", ((Named.Force) load).force);
      }
    }
    return sum;
  }

  Expression aboutLeft() {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2^2/2", whole.load, length);
      } else if (load instanceof Named.Part part) {
        sum.plus("$1*($3^2-$2^2)/2", part.load, part.from, part.to);
      } else if (load instanceof Named.Force force) {
        sum.plus("$1*$2", force.force, force.at);
      }
    }
    return sum;
  }

  Expression aboutRight() {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2^2/2", whole.load, length);
      } else if (load instanceof Named.Part part) {
        sum.plus("$1*($3-$2)*($4-($2+$3)/2)", part.load, part.from, part.to, length);
      } else if (load instanceof Named.Force force) {
        sum.plus("$1*($3-$2)", force.force, force.at, length);
      }
    }
    return sum;
  }

  Expression heldLeft() {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2^2/12", whole.load, length);
      } else if (load instanceof Named.Part part) {
        sum.plus(
            "$1*(6*$4^2*($3^2-$2^2)-8*$4*($3^3-$2^3)+3*($3^4-$2^4))/(12*$4^2)",
            part.load,
            part.from,
            part.to,
            length);
      } else if (load instanceof Named.Force force) {
        sum.plus("$1*$2*($3-$2)^2/$3^2", force.force, force.at, length);
      }
    }
    return sum;
  }

  Expression heldRight() {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2^2/12", whole.load, length);
      } else if (load instanceof Named.Part part) {
        sum.plus(
            "$1*(4*$4*($3^3-$2^3)-3*($3^4-$2^4))/(12*$4^2)", part.load, part.from, part.to, length);
      } else if (load instanceof Named.Force force) {
        sum.plus("$1*$2^2*($3-$2)/$3^2", force.force, force.at, length);
      }
    }
    return sum;
  }

  /** Moment of the loads left of a place about that place. */
  Expression before(Term place) {
    Expression sum = new Expression();
    for (Named load : loads) {
      if (load instanceof Named.Whole whole) {
        sum.plus("$1*$2^2/2", whole.load, place);
      } else if (load instanceof Named.Part part && part.from.si() < place.si()) {
        boolean over = part.to.si() <= place.si();
        String text = over ? "$1*(($4-$2)^2-($4-$3)^2)/2" : "$1*($4-$2)^2/2";
        sum.plus(text, over ? terms(part, place) : new Term[] {part.load, part.from, place, place});
      } else if (load instanceof Named.Force force && force.at.si() < place.si()) {
        sum.plus("$1*($3-$2)", force.force, force.at, place);
      }
    }
    return sum;
  }

  private static Term[] terms(Named.Part part, Term place) {
    return new Term[] {part.load, part.from, part.to, place};
  }
}

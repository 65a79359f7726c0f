package clampwise.facts.roof;

import clampwise.calc.Snap;
import clampwise.facts.Fact;
import clampwise.job.LengthRange;
import clampwise.job.Quantity.Length;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;

/** A question that holds a size of the covering against a range of the part. */
abstract class SizeQuestion extends PartQuestion {

  SizeQuestion(Class<? extends Fact> type) {
    super(type);
  }

  /**
   * A size of the covering, the range of the part it is held against, and what both are called.
   *
   * @param panelKey key of the size in the job file
   */
  record Sized(
      String dimension, Optional<Length> size, Optional<LengthRange> range, String panelKey) {

    Map<String, Unit> units() {
      LengthRange known = range.orElseThrow();
      return Map.of("minM", known.min().unit(), "maxM", known.max().unit());
    }

    /** Key of the range in the job file. */
    String partKey() {
      return dimension.equals("rib top width") ? "rib-top" : dimension.replace(' ', '-');
    }

    /** The end of the range nearer to the size [m]. */
    double nearestBoundM() {
      return Math.abs(sizeM() - minM()) <= Math.abs(sizeM() - maxM()) ? minM() : maxM();
    }

    double sizeM() {
      return Snap.m(size.orElseThrow().m());
    }

    double minM() {
      return Snap.m(range.orElseThrow().min().m());
    }

    double maxM() {
      return Snap.m(range.orElseThrow().max().m());
    }
  }

  /** Makes the fact for a size that is known on both sides. */
  abstract Fact fact(PartUse use, Sized sized, Asked asked);

  final void ask(PartUse use, Sized sized, Asked asked) {
    if (sized.size().isEmpty()) {
      String what = "the " + sized.dimension() + " of " + use.plane().panelName();
      missing(use, asked, use.ofPanel(what, sized.panelKey()), use.panelAt());
    } else if (sized.range().isEmpty()) {
      String what = "the " + sized.dimension() + " that " + use.name() + " fits";
      missing(use, asked, use.ofPart(what, sized.partKey()), use.partAt());
    } else {
      asked.answers().add(fact(use, sized, asked));
    }
  }
}

package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.job.Panel;
import clampwise.job.RibBracket;

/** Holds rib height and the flat on top of the rib against what each rib bracket fits. */
final class RibSizeFits extends SizeQuestion {

  RibSizeFits() {
    super(RibSizeFit.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    Panel panel = use.panel();
    if (use.part() instanceof RibBracket bracket && !Profiles.isSeam(panel)) {
      ask(use, new Sized("rib height", panel.height(), bracket.ribHeight(), "height"), asked);
      if (panel.kind().value() == Panel.Kind.TRAPEZOIDAL) {
        ask(
            use,
            new Sized("rib top width", panel.topWidth(), bracket.ribTop(), "top-width"),
            asked);
      }
    }
  }

  @Override
  Fact fact(PartUse use, Sized sized, Asked asked) {
    return new RibSizeFit(
        use.subject().part(sized.dimension()),
        use.cause().part(sized.dimension()),
        use.name().at(),
        sized.size().orElseThrow().unit(),
        sized.units(),
        use.name().value(),
        use.plane().panelName(),
        sized.dimension(),
        sized.sizeM(),
        sized.minM(),
        sized.maxM(),
        sized.nearestBoundM(),
        asked.fitting(use));
  }
}

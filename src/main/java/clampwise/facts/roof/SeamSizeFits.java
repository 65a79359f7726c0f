package clampwise.facts.roof;

import clampwise.facts.Fact;
import clampwise.job.Panel;
import clampwise.job.SeamClamp;

/** Holds seam height and width against what each seam clamp grips. */
final class SeamSizeFits extends SizeQuestion {

  SeamSizeFits() {
    super(SeamSizeFit.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    Panel panel = use.panel();
    if (use.part() instanceof SeamClamp clamp && Profiles.isSeam(panel)) {
      ask(use, new Sized("seam height", panel.height(), clamp.seamHeight(), "height"), asked);
      ask(use, new Sized("seam width", panel.topWidth(), clamp.seamWidth(), "top-width"), asked);
    }
  }

  @Override
  Fact fact(PartUse use, Sized sized, Asked asked) {
    return new SeamSizeFit(
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

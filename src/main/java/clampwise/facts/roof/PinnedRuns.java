package clampwise.facts.roof;

import clampwise.catalogue.Limit;
import clampwise.facts.layout.Attachment;
import clampwise.facts.layout.SeamLine;
import clampwise.job.Choice;
import clampwise.job.Panel;
import clampwise.units.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Counts the fixed points of floating panel runs. */
final class PinnedRuns extends PartQuestion {

  PinnedRuns() {
    super(FixedPoints.class);
  }

  @Override
  void ask(PartUse use, Asked asked) {
    Optional<Choice<Panel.Clips>> clips = use.panel().clips();
    if (clips.isEmpty() && use.part().fixesPanel()) {
      String what = "whether " + use.plane().panelName() + " floats on its clips";
      missing(use, asked, use.ofPanel(what, "clips"), use.panelAt());
    } else if (clips.filter(given -> given.value() == Panel.Clips.FLOATING).isPresent()) {
      asked.answers().add(fact(use, asked));
    }
  }

  private static FixedPoints fact(PartUse use, Asked asked) {
    Limit most = asked.limits().get("fixed-points-per-run-most");
    Optional<Map.Entry<Integer, Integer>> busiest = busiestSeam(use);
    return new FixedPoints(
        use.subject(),
        use.cause(),
        use.name().at(),
        Unit.NUMBER,
        use.name().value(),
        use.plane().panelName(),
        use.panel().fixedPoint().map(Choice::toString),
        busiest.map(Map.Entry::getKey).orElse(0),
        1 + busiest.map(Map.Entry::getValue).orElse(0),
        (int) most.si(),
        Optional.of(most),
        asked.fitting(use));
  }

  /** The seam with most attachments that pin it, and how many. */
  private static Optional<Map.Entry<Integer, Integer>> busiestSeam(PartUse use) {
    Map<Integer, Integer> bySeam = new TreeMap<>();
    if (use.part().fixesPanel()) {
      use.field().attachments().stream()
          .filter(each -> each.part().map(p -> p.value().equals(use.name().value())).orElse(false))
          .map(Attachment::seam)
          .flatMap(Optional::stream)
          .map(SeamLine::number)
          .forEach(number -> bySeam.merge(number, 1, Integer::sum));
    }
    return bySeam.entrySet().stream().max(Map.Entry.comparingByValue());
  }
}

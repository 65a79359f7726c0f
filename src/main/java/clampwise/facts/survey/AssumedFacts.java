package clampwise.facts.survey;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Panel;
import clampwise.job.Shape;
import clampwise.job.Text;
import clampwise.job.Written;
import clampwise.source.Span;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Asks of each written property of a roof covering whether it is only assumed. */
final class AssumedFacts {

  private AssumedFacts() {}

  static void ask(Layout layout, Limits limits, Answers answers) {
    layout
        .job()
        .panels()
        .all()
        .forEach(panel -> judge(panel.name().value(), panel.value(), answers));
  }

  /** A word that is no key is a problem of its own. */
  private static void judge(String covering, Panel panel, Answers answers) {
    Map<String, Span> confirmed = written(panel);
    Map<String, Span> assumed = new LinkedHashMap<>();
    Set<String> keys = Shape.of(Panel.class).byKey().keySet();
    for (Text key : panel.assumed()) {
      if (keys.contains(key.value())) {
        assumed.putIfAbsent(key.value(), key.at());
      }
    }
    confirmed.keySet().removeAll(assumed.keySet());
    assumed.forEach((key, at) -> answers.add(fact(covering, key, at, false)));
    confirmed.forEach((key, at) -> answers.add(fact(covering, key, at, true)));
  }

  private static AssumedFact fact(String covering, String key, Span at, boolean confirmed) {
    Subject subject = Subject.of("panels." + covering, key);
    return new AssumedFact(subject, at, covering, key, confirmed);
  }

  /** Where each property is written, in the order of the job file's keys. */
  static Map<String, Span> written(Panel panel) {
    Map<String, Optional<? extends Written>> values = new LinkedHashMap<>();
    values.put("profile", panel.profile());
    values.put("metal", panel.metal());
    values.put("thickness", panel.thickness());
    values.put("coating", panel.coating());
    values.put("pitch", panel.pitch());
    values.put("height", panel.height());
    values.put("top-width", panel.topWidth());
    values.put("minor-ribs", panel.minorRibs().stream().findFirst());
    values.put("clips", panel.clips());
    values.put("fixed-point", panel.fixedPoint());
    values.put("substrate", panel.substrate());
    Map<String, Span> places = new LinkedHashMap<>();
    values.forEach((key, value) -> value.ifPresent(found -> places.put(key, found.at())));
    return places;
  }
}

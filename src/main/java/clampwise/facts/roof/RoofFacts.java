package clampwise.facts.roof;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Question;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Text;
import clampwise.job.Written;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Lists the facts given about each covering, and which of them are marked as assumed. */
final class RoofFacts implements Question {

  @Override
  public void ask(Layout layout, Limits limits, Answers answers) {
    layout.job().panels().all().forEach(item -> ask(item, answers));
  }

  private static void ask(Named.Item<Panel> item, Answers answers) {
    Map<String, Span> given = given(item.value());
    item.value().assumed().forEach(key -> given.remove(key.value()));
    given.forEach((key, at) -> answers.add(fact(item, key, at, false)));
    for (Text key : item.value().assumed()) {
      answers.add(fact(item, key.value(), key.at(), true));
    }
  }

  private static Map<String, Span> given(Panel panel) {
    Map<String, Span> given = new LinkedHashMap<>();
    given.put("kind", panel.kind().at());
    add(given, "profile", panel.profile());
    add(given, "metal", panel.metal());
    add(given, "thickness", panel.thickness());
    add(given, "coating", panel.coating());
    add(given, "pitch", panel.pitch());
    add(given, "height", panel.height());
    add(given, "top-width", panel.topWidth());
    add(given, "clips", panel.clips());
    add(given, "fixed-point", panel.fixedPoint());
    add(given, "substrate", panel.substrate());
    return given;
  }

  private static void add(Map<String, Span> given, String key, Optional<? extends Written> value) {
    value.ifPresent(written -> given.put(key, written.at()));
  }

  private static RoofFact fact(Named.Item<Panel> item, String key, Span at, boolean assumed) {
    Subject panel = Subject.of("panels." + item.name().value());
    return new RoofFact(
        panel.part(key),
        panel.part("assumed"),
        at,
        Unit.MILLIMETRE,
        item.name().value(),
        key,
        assumed);
  }
}

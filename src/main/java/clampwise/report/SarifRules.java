package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Finding;
import clampwise.finding.NotChecked;
import clampwise.review.Review;
import clampwise.rulebook.RuleCard;
import clampwise.rulebook.Rulebook;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The rules of a run as SARIF describes them; those that found something with their page. */
final class SarifRules {

  private static final int HELP_WIDTH = 100;

  /** A page refers to others, which do not come along. */
  private static final Pattern LINK = Pattern.compile("\\[([^\\]]+)\\]\\([^)]*\\)");

  private static final Pattern EXAMPLES = Pattern.compile("(?s)\n## Examples\n.*?(?=\n## |$)");

  private final Run run;
  private final Map<String, RuleCard> cards = new TreeMap<>();
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<String> ids = new ArrayList<>();
  private final Map<String, Finding> found = new TreeMap<>();

  SarifRules(Run run) {
    this.run = run;
    Rulebook.builtIn().cards().forEach(card -> cards.put(card.id(), card));
    run.own().rules().cards().forEach(card -> cards.put(card.id(), card));
    Set<String> all = new TreeSet<>(cards.keySet());
    for (Review review : run.reviews()) {
      for (Finding finding : review.findings()) {
        found.putIfAbsent(finding.rule(), finding);
      }
      for (Accepted one : review.accepted()) {
        found.putIfAbsent(one.finding().rule(), one.finding());
      }
      for (NotChecked one : review.notChecked()) {
        all.add(one.rule());
      }
    }
    all.addAll(found.keySet());
    for (String id : all) {
      numbers.put(id, ids.size());
      ids.add(id);
    }
  }

  /** Where a rule stands in the list. */
  int number(String rule) {
    return numbers.getOrDefault(rule, -1);
  }

  /** Writes the list. */
  void write(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("rules");
    for (String id : ids) {
      json.writeStartObject();
      json.writeStringField("id", id);
      if (cards.containsKey(id)) {
        card(cards.get(id), json);
      } else if (found.containsKey(id)) {
        SarifText.write("shortDescription", found.get(id).title() + ".", json);
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void card(RuleCard card, JsonGenerator json) throws IOException {
    SarifText.write("shortDescription", card.title() + ".", json);
    SarifText.write("fullDescription", card.reason(), json);
    if (found.containsKey(card.id())) {
      help(page(card.id()), json);
    }
    json.writeObjectFieldStart("defaultConfiguration");
    json.writeStringField("level", card.severity().word());
    json.writeEndObject();
    json.writeObjectFieldStart("properties");
    json.writeArrayFieldStart("tags");
    json.writeString(card.topic());
    if (card.isOwn()) {
      json.writeString("own");
    }
    json.writeEndArray();
    json.writeStringField("since", card.since());
    json.writeEndObject();
  }

  private String page(String id) {
    String page = run.page(id).map(found -> found.text()).orElse("");
    return LINK.matcher(EXAMPLES.matcher(page).replaceAll("")).replaceAll("$1");
  }

  private static void help(String page, JsonGenerator json) throws IOException {
    if (page.isEmpty()) {
      return;
    }
    Sheet text = new Sheet(HELP_WIDTH, Paint.NONE);
    new MarkdownText(text).write(page);
    json.writeObjectFieldStart("help");
    json.writeStringField("text", SarifText.escaped(text.toString()));
    json.writeStringField("markdown", SarifText.escaped(page));
    json.writeEndObject();
  }
}

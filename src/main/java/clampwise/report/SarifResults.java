package clampwise.report;

import clampwise.finding.Accepted;
import clampwise.finding.Basis;
import clampwise.finding.Finding;
import clampwise.finding.FindingName;
import clampwise.finding.FindingOrder;
import clampwise.finding.Place;
import clampwise.finding.Subject;
import clampwise.review.Review;
import clampwise.source.Span;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The findings of a job as results of SARIF. */
final class SarifResults {

  private final JsonGenerator json;
  private final SarifRules rules;
  private final SarifPlaces places;
  private final JsonParts parts;
  private final Citations citations = Citations.packed();

  SarifResults(JsonGenerator json, SarifRules rules, SarifPlaces places) {
    this.json = json;
    this.rules = rules;
    this.places = places;
    this.parts = new JsonParts(json);
  }

  /** Writes every finding as an object of a list. */
  void write(Review review) throws IOException {
    FindingOrder order = FindingOrder.of(review.findings());
    Map<FindingName, Finding> byName = new HashMap<>();
    review.findings().forEach(finding -> byName.put(finding.name(), finding));
    for (Finding finding : review.findings()) {
      Optional<Finding> first = finding.follows().map(byName::get);
      json.writeStartObject();
      result(finding, first);
      json.writeObjectFieldStart("properties");
      json.writeStringField("job", Harmless.of(review.title()));
      Optional<Integer> number = order.number(first.orElse(finding));
      if (number.isPresent()) {
        json.writeNumberField("number", number.get());
      }
      properties(finding);
      json.writeEndObject();
      json.writeEndObject();
    }
    for (Accepted one : review.accepted()) {
      json.writeStartObject();
      result(one.finding(), Optional.empty());
      suppression(one);
      json.writeObjectFieldStart("properties");
      json.writeStringField("job", Harmless.of(review.title()));
      properties(one.finding());
      json.writeEndObject();
      json.writeEndObject();
    }
  }

  /** That somebody answers for a result, with the words in which they do. */
  private void suppression(Accepted one) throws IOException {
    json.writeArrayFieldStart("suppressions");
    json.writeStartObject();
    json.writeStringField("kind", "external");
    json.writeStringField("status", "accepted");
    json.writeStringField("justification", Harmless.of(one.words()));
    json.writeObjectFieldStart("location");
    places.location(one.at(), List.of());
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
  }

  private void result(Finding finding, Optional<Finding> first) throws IOException {
    json.writeStringField("ruleId", finding.rule());
    json.writeNumberField("ruleIndex", rules.number(finding.rule()));
    json.writeStringField("level", finding.severity().word());
    SarifText.write("message", message(finding), json);
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    places.location(finding.at(), List.of(finding.cause()));
    json.writeEndObject();
    json.writeEndArray();
    related(finding, first);
    json.writeObjectFieldStart("partialFingerprints");
    json.writeStringField("ruleAndSubject/v1", fingerprint(finding.name()));
    json.writeEndObject();
  }

  private static String message(Finding finding) {
    int places = finding.places().size();
    return finding.message()
        + (places < 2 ? "" : " (" + places + " places)")
        + ". Remedy: "
        + finding.remedy()
        + ".";
  }

  /** Where else it is written or shows, and what it follows from. */
  private void related(Finding finding, Optional<Finding> first) throws IOException {
    Map<Span, List<Subject>> written = written(finding);
    if (written.isEmpty() && first.isEmpty()) {
      return;
    }
    json.writeArrayFieldStart("relatedLocations");
    int id = 0;
    if (first.isPresent()) {
      List<Subject> cause = List.of(first.get().cause());
      related(id++, first.get().at(), cause, "follows from " + first.get().rule());
    }
    for (Map.Entry<Span, List<Subject>> place : written.entrySet()) {
      related(id++, place.getKey(), place.getValue(), "shows at " + named(place.getValue()));
    }
    json.writeEndArray();
  }

  private void related(int id, Span at, List<Subject> subjects, String text) throws IOException {
    json.writeStartObject();
    json.writeNumberField("id", id);
    places.location(at, subjects);
    SarifText.write("message", text, json);
    json.writeEndObject();
  }

  /** The subjects at each written place; none where there is but the finding's own. */
  private static Map<Span, List<Subject>> written(Finding finding) {
    Map<Span, List<Subject>> written = new LinkedHashMap<>();
    for (Place place : finding.places()) {
      written.computeIfAbsent(place.at(), unseen -> new ArrayList<>()).add(place.subject());
    }
    boolean own = finding.places().size() == 1 && written.containsKey(finding.at());
    return own ? Map.of() : written;
  }

  private static String named(List<Subject> subjects) {
    List<String> paths = new ArrayList<>();
    subjects.forEach(subject -> paths.add(subject.path()));
    return String.join("; ", PlaceNames.lines(paths));
  }

  private void properties(Finding finding) throws IOException {
    json.writeStringField("subject", Harmless.of(finding.cause().path()));
    if (!finding.loadCase().isEmpty()) {
      json.writeStringField("loadCase", Harmless.of(finding.loadCase()));
    }
    json.writeStringField("reason", Harmless.of(finding.reason()));
    json.writeStringField("remedy", Harmless.of(finding.remedy()));
    json.writeArrayFieldStart("basis");
    for (Basis basis : finding.basis()) {
      json.writeString(Harmless.of(citations.text(basis)));
    }
    json.writeEndArray();
    parts.comparison(finding.comparison());
    if (finding.follows().isPresent()) {
      FindingName first = finding.follows().get();
      json.writeObjectFieldStart("follows");
      json.writeStringField("rule", first.rule());
      json.writeStringField("subject", Harmless.of(first.cause().path()));
      json.writeStringField("fingerprint", fingerprint(first));
      json.writeEndObject();
    }
  }

  /** The same for the same finding, whatever is edited elsewhere in the file. */
  static String fingerprint(FindingName name) {
    String loadCase = name.loadCase().isEmpty() ? "" : "\n" + name.loadCase();
    String text = name.rule() + "\n" + name.cause().path() + loadCase;
    try {
      byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}

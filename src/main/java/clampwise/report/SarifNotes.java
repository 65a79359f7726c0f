package clampwise.report;

import clampwise.review.Review;
import clampwise.source.Problem;
import clampwise.source.Span;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** What a run could not do, as notifications of SARIF. */
final class SarifNotes {

  /** What a notification is about, in the order in which they are described. */
  private enum Kind {
    NOT_READABLE("not-readable", "error", "Something in the input that cannot be read as meant."),
    NOT_CHECKED("not-checked", "note", "A rule could not be applied; this is not a pass."),
    NOTHING_REVIEWED("nothing-reviewed", "error", "A job has no module that could be reviewed."),
    FAULT("fault", "error", "The program failed at a job, which was not reviewed."),
    OWN_RULE("own-rule", "error", "A rule of the company's own is wrong and was left out.");

    private final String id;
    private final String level;
    private final String description;

    Kind(String id, String level, String description) {
      this.id = id;
      this.level = level;
      this.description = description;
    }
  }

  private final JsonGenerator json;
  private final SarifRules rules;
  private final SarifPlaces places;

  SarifNotes(JsonGenerator json, SarifRules rules, SarifPlaces places) {
    this.json = json;
    this.rules = rules;
    this.places = places;
  }

  /** Writes what the kinds of notifications are. */
  static void describe(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("notifications");
    for (Kind kind : Kind.values()) {
      json.writeStartObject();
      json.writeStringField("id", kind.id);
      SarifText.write("shortDescription", kind.description, json);
      json.writeObjectFieldStart("defaultConfiguration");
      json.writeStringField("level", kind.level);
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** Writes all notifications of a run. */
  void write(Run run) throws IOException {
    json.writeArrayFieldStart("toolExecutionNotifications");
    for (Review review : run.reviews()) {
      write(review);
    }
    if (run.isFaulty()) {
      open(Kind.FAULT, Kind.FAULT.description);
      json.writeEndObject();
    }
    json.writeEndArray();
    if (!run.own().problems().isEmpty()) {
      ownRules(run.own().problems());
    }
  }

  private void ownRules(List<Problem> problems) throws IOException {
    json.writeArrayFieldStart("toolConfigurationNotifications");
    for (Problem problem : problems) {
      open(Kind.OWN_RULE, ProblemLine.of(problem) + ".");
      at(problem.at());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void write(Review review) throws IOException {
    for (Problem problem : review.problems()) {
      open(Kind.NOT_READABLE, ProblemLine.of(problem) + ".");
      at(problem.at());
      json.writeEndObject();
    }
    if (review.modules() == 0) {
      open(Kind.NOTHING_REVIEWED, SummaryText.NO_MODULE);
      at(Span.startOf(review.file()));
      json.writeEndObject();
    }
    for (NotCheckedGroup group : NotCheckedGroup.of(review.notChecked())) {
      for (String rule : group.rules()) {
        notChecked(rule, group);
      }
    }
  }

  private void notChecked(String rule, NotCheckedGroup group) throws IOException {
    open(Kind.NOT_CHECKED, "Not checked: " + group.reason() + ".");
    at(group.at());
    json.writeObjectFieldStart("associatedRule");
    json.writeStringField("id", rule);
    json.writeNumberField("index", rules.number(rule));
    json.writeEndObject();
    json.writeEndObject();
  }

  private void open(Kind kind, String text) throws IOException {
    json.writeStartObject();
    json.writeObjectFieldStart("descriptor");
    json.writeStringField("id", kind.id);
    json.writeNumberField("index", kind.ordinal());
    json.writeEndObject();
    json.writeStringField("level", kind.level);
    SarifText.write("message", text, json);
  }

  private void at(Span at) throws IOException {
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    places.location(at, List.of());
    json.writeEndObject();
    json.writeEndArray();
  }
}

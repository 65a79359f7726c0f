package clampwise.facts.documents;

import clampwise.calc.trail.Table;
import clampwise.facts.Fact;
import clampwise.job.Day;
import clampwise.job.Documents.Sheet;
import clampwise.job.Named;
import clampwise.units.Unit;
import java.util.Optional;

/** Holds the dates of documents against the day on which they are handed in; no clock is asked. */
record DocumentDates(Submittal submittal, Optional<Day> handedIn) {

  static void ask(Submittal submittal) {
    DocumentDates dates = new DocumentDates(submittal, submittal.documents().handedIn());
    for (Named.Item<Sheet> item : submittal.documents().sheets().all()) {
      Optional<Table.Row> row = submittal.row(item.value().kind().value());
      dates.askExpiry(item, row);
      dates.askDate(item, row);
    }
  }

  private void askExpiry(Named.Item<Sheet> item, Optional<Table.Row> row) {
    Optional<Day> until = item.value().validUntil();
    if (until.isEmpty()) {
      if (row.filter(found -> Submittal.isYes(found, "dated")).isPresent()) {
        missing(
            DocumentExpiry.class,
            item,
            "how long letters and reports hold is not given (valid-until)");
      }
    } else if (handedIn.isEmpty()) {
      missing(DocumentExpiry.class, item, unknown());
    } else {
      submittal.answers().add(expiry(item, words(item, row), until.get(), handedIn.get()));
    }
  }

  private static DocumentExpiry expiry(
      Named.Item<Sheet> item, String words, Day until, Day handedIn) {
    return new DocumentExpiry(
        Submittal.subject(item),
        until.at(),
        Unit.NUMBER,
        item.name().value(),
        words,
        until.toString(),
        handedIn.toString(),
        (int) until.daysUntil(handedIn),
        0);
  }

  private void askDate(Named.Item<Sheet> item, Optional<Table.Row> row) {
    Optional<Day> on = item.value().on();
    if (on.isPresent() && handedIn.isPresent()) {
      submittal.answers().add(date(item, words(item, row), on.get(), handedIn.get()));
    } else if (on.isPresent()) {
      missing(DocumentDate.class, item, unknown());
    }
  }

  private static DocumentDate date(Named.Item<Sheet> item, String words, Day on, Day handedIn) {
    return new DocumentDate(
        Submittal.subject(item),
        on.at(),
        Unit.NUMBER,
        item.name().value(),
        words,
        on.toString(),
        handedIn.toString(),
        (int) handedIn.daysUntil(on),
        0);
  }

  private static String words(Named.Item<Sheet> item, Optional<Table.Row> row) {
    return row.map(found -> found.word("words")).orElse("document " + item.name().value());
  }

  private String unknown() {
    return submittal.lacks("the day on which the package is handed in", "handed-in");
  }

  private void missing(Class<? extends Fact> type, Named.Item<Sheet> item, String reason) {
    submittal.missing(type, Submittal.subject(item), reason);
  }
}

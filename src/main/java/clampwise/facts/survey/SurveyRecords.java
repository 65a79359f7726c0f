package clampwise.facts.survey;

import clampwise.catalogue.Limits;
import clampwise.facts.Answers;
import clampwise.facts.Fact;
import clampwise.facts.layout.Layout;
import clampwise.finding.Subject;
import clampwise.job.Named;
import clampwise.job.Panel;
import clampwise.job.Survey;
import clampwise.job.Text;
import clampwise.job.Unreadable;
import clampwise.job.Written;
import clampwise.source.Span;
import clampwise.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Asks of a survey who measured when, and which facts of the coverings it shows on photos. */
record SurveyRecords(Layout layout, Survey survey, Answers answers) {

  private static final Subject SURVEY = Subject.of("survey");

  static void ask(Layout layout, Limits limits, Answers answers) {
    Optional<Survey> survey = layout.job().survey();
    if (survey.isPresent()) {
      SurveyRecords records = new SurveyRecords(layout, survey.get(), answers);
      records.askRecord();
      records.askPhotos();
    } else {
      Unreadable lost = layout.job().unreadable();
      String reason = lost.unwritten("the job tells of no survey", "the survey", "survey");
      for (Class<? extends Fact> type : List.of(SurveyRecord.class, FactPhoto.class)) {
        answers.missing(type, SURVEY, reason, layout.job().at("survey"));
      }
    }
  }

  private void askRecord() {
    if (isLost("by") || isLost("on")) {
      missing(SurveyRecord.class, "who made the survey, and when, could not be read");
      return;
    }
    List<String> lacking = new ArrayList<>();
    if (survey.by().isEmpty()) {
      lacking.add("in which role somebody measured");
    }
    if (survey.on().isEmpty()) {
      lacking.add("on which day");
    }
    String words = String.join(" and ", lacking);
    answers.add(new SurveyRecord(SURVEY, at(), Unit.NUMBER, lacking.isEmpty(), words));
  }

  private boolean isLost(String key) {
    return layout.job().unreadable().touches("survey", key);
  }

  private Span at() {
    return survey
        .by()
        .<Written>map(by -> by)
        .or(survey::on)
        .or(() -> survey.eaveOutOfSquare().map(Survey.OutOfSquare::offset))
        .map(Written::at)
        .orElse(layout.job().at("survey"));
  }

  private void missing(Class<? extends Fact> type, String reason) {
    answers.missing(type, SURVEY, reason, layout.job().at("survey"));
  }

  private void askPhotos() {
    Optional<List<Text>> photos = survey.photos();
    if (photos.isEmpty() || isLost("photos")) {
      String what = "which facts of the roof are on photos";
      missing(FactPhoto.class, layout.job().unreadable().missing(what, "survey", "photos"));
      return;
    }
    List<String> keys = new ArrayList<>();
    photos.get().forEach(key -> keys.add(key.value()));
    for (Named.Item<Panel> panel : layout.job().panels().all()) {
      AssumedFacts.written(panel.value())
          .forEach((key, at) -> judge(panel, key, keys.contains(key), photos.get()));
    }
  }

  private void judge(Named.Item<Panel> panel, String key, boolean known, List<Text> photos) {
    String covering = panel.name().value();
    boolean assumed = panel.value().assumed().stream().anyMatch(text -> text.value().equals(key));
    if (!assumed) {
      Subject subject = Subject.of("panels." + covering, key + " on a photo");
      Span at = photos.isEmpty() ? panel.name().at() : photos.get(0).at();
      answers.add(new FactPhoto(subject, at, Unit.NUMBER, covering, key, known));
    }
  }
}

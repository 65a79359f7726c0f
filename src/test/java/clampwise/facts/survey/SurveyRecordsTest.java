package clampwise.facts.survey;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.facts.BaseJob;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who measured when, and what photos show. */
class SurveyRecordsTest {

  @Test
  void aFactThatIsAssumedNeedsNoPhoto() {
    BaseJob job =
        with("panels: {steel seams: {assumed: [profile]}}\nsurvey: {photos: [metal, pitch]}");

    assertThat(job.facts(FactPhoto.class))
        .extracting(photo -> photo.key() + " " + photo.photographed())
        .containsExactly("metal true", "thickness false", "pitch true");
  }

  @Test
  void withoutAListOfPhotosNothingIsKnownOfThem() {
    BaseJob job = with("survey: {photos: ~}");

    assertThat(job.facts(FactPhoto.class)).isEmpty();
    assertThat(job.missing(FactPhoto.class))
        .containsExactly("which facts of the roof are on photos is not given (survey: photos)");
  }

  @Test
  void aSurveyNamesRoleAndDay() {
    assertThat(with("{}").only(SurveyRecord.class).complete()).isTrue();
    assertThat(with("survey: {by: ~, on: ~}").only(SurveyRecord.class).lacking())
        .isEqualTo("in which role somebody measured and on which day");
  }

  @Test
  void aJobWithoutSurveyIsNotCheckedForOneReason() {
    BaseJob job = with("survey: ~");

    for (var type : List.of(FactPhoto.class, SurveyRecord.class)) {
      assertThat(job.missing(type)).containsExactly("the job tells of no survey (survey)");
    }
  }

  private static BaseJob with(String over) {
    return BaseJob.with("ready-roof", over);
  }
}

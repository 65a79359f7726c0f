package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyPathTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "the wind speed of the site|site,wind-speed|(site: wind-speed)",
        "the metal of hay roof|panels,hay roof,metal|(metal)",
        "the size of circuit strings|electrical,circuits,strings,grounding,size|(grounding: size)",
        "the slack of mid clamp MC-1|parts,mid-clamps,MC-1,slack|(slack)",
        "what the sheet rests on|panels,hay roof,substrate|(panels: hay roof: substrate)"
      })
  void theKeyIsNamedFromTheThingOnThatTheSentenceNames(String said, String path, String key) {
    assertThat(KeyPath.behind(said, List.of(path.split(",")))).isEqualTo(said + " " + key);
  }

  @Test
  void aSentenceThatNamesTheKeyIsLeftAsItIs() {
    String said = "the age (roof: age) is not given";
    assertThat(KeyPath.behind(said, List.of("roof", "age"))).isEqualTo(said);
  }

  @Test
  void aPlaceIsThatOfTheLastKeyThatIsWritten() {
    Job job = ReadJob.of(ReadJob.SMALL + "install: {begins: 2026-06-01}\n").job().orElseThrow();
    assertThat(job.at("install", "torques")).hasToString("job.yaml:13:1");
    assertThat(job.at("fields", "A", "gap")).hasToString("job.yaml:9:3");
    assertThat(job.at("survey", "by")).isEqualTo(job.job().at());
    assertThat(Keys.NONE.lastOf(List.of("job"))).isEqualTo(Optional.empty());
  }
}

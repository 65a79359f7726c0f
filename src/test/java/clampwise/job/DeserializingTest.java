package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import org.junit.jupiter.api.Test;

class DeserializingTest {

  @Test
  void everythingBelowTheJobCanBeMadeReadyAheadOfIt() {
    assertThatCode(JobReader::prepare).doesNotThrowAnyException();
  }

  @Test
  void aTypeHasOneDeserializer() {
    assertThat(Deserializing.of(Plane.class)).isSameAs(Deserializing.of(Plane.class));
  }
}

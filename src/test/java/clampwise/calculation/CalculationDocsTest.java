package clampwise.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page of calculations is written from the registry. With {@code -Dupdate.docs} it is. */
class CalculationDocsTest {

  private static final Path PAGE = Path.of("docs/calculations.md");

  @Test
  void thePageSaysWhatTheCalculationsSay() throws IOException {
    String wanted = CalculationsPage.text();
    if (System.getProperty("update.docs") != null) {
      Files.writeString(PAGE, wanted);
    }
    assertThat(PAGE)
        .as("mvn -Pquick test -Dtest=CalculationDocsTest -Dupdate.docs")
        .exists()
        .content()
        .isEqualTo(wanted);
  }
}

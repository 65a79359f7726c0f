package clampwise;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.Limit;
import clampwise.catalogue.LimitsReader;
import clampwise.units.QuantityPrint;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The output and the table on the page of take-offs are written by this test. With {@code
 * -Dupdate.docs} they are.
 */
class TakeoffPageTest {

  private static final Path PAGE = Path.of("docs/takeoff.md");
  private static final Path OUTPUT = Path.of("examples/dairy-l-shaped/takeoff.txt");
  private static final String BEFORE_OUTPUT = "```text\n";
  private static final String AFTER_OUTPUT = "```\n\n## What is assumed";
  private static final String TABLE = "|---|---|---|---|\n";

  @Test
  void thePageShowsWhatTheProgramPrintsAndAssumes() throws IOException {
    String page = Files.readString(PAGE);
    String wanted =
        page.substring(0, page.indexOf(BEFORE_OUTPUT) + BEFORE_OUTPUT.length())
            + Files.readString(OUTPUT)
            + page.substring(page.indexOf(AFTER_OUTPUT), page.indexOf(TABLE) + TABLE.length())
            + assumed();
    if (System.getProperty("update.docs") != null) {
      Files.writeString(PAGE, wanted);
    }
    assertThat(Files.readString(PAGE))
        .as("mvn -Pquick test -Dtest=TakeoffPageTest -Dupdate.docs")
        .isEqualTo(wanted);
  }

  private static String assumed() {
    return LimitsReader.takeoff().byKey().values().stream()
        .map(TakeoffPageTest::row)
        .collect(Collectors.joining());
  }

  private static String row(Limit limit) {
    return "| `%s` | %s | %s | %s |\n"
        .formatted(
            limit.key(),
            QuantityPrint.text(limit.si(), limit.unit()),
            limit.validity(),
            limit.obtained());
  }
}

package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.calc.trail.Source;
import clampwise.calc.trail.Table;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodeTablesTest {

  private static final Set<String> OBTAINED =
      Set.of(
          "read",
          "second-hand",
          "from a library",
          "from memory",
          "worked out",
          "common practice, no source");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "asce-snow.yaml",
        "combinations.yaml",
        "en-wind.yaml",
        "en-snow.yaml",
        "electrical.yaml"
      })
  void everyTableSaysWhereItComesFromAndWhereItHolds(String file) {
    String references = SharedData.text("references.bib");
    assertThat(TablesReader.read(file).byKey().values())
        .isNotEmpty()
        .allSatisfy(
            table -> {
              Source source = table.source();
              assertThat(references).as(table.key()).contains("{" + source.document() + ",");
              if (!source.document().equals("practice")) {
                assertThat(source.edition()).as(table.key()).isNotEmpty();
                assertThat(source.clause()).as(table.key()).isNotEmpty();
              }
              assertThat(OBTAINED).as(table.key()).contains(source.obtained());
              assertThat(source.validity()).as(table.key()).isNotEmpty();
            });
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "duopitch-0",
        "duopitch-90",
        "monopitch-0",
        "monopitch-180",
        "monopitch-90",
        "flat"
      })
  void smallAreasAreNeverLessSevere(String key) {
    for (Table.Row row : TablesReader.read("en-wind.yaml").get(key).rows()) {
      row.find("suction-1")
          .ifPresent(one -> assertThat(one).isLessThanOrEqualTo(row.number("suction-10")));
      row.find("pressure-1")
          .ifPresent(one -> assertThat(one).isGreaterThanOrEqualTo(row.number("pressure-10")));
    }
  }
}

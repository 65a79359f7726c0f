package clampwise.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import clampwise.calc.trail.Table;
import org.junit.jupiter.api.Test;

class TablesReaderTest {
  private static final String TEXT =
      """
      terrain:
        document: asce-7-16
        edition: 7-16
        clause: Table 26.11-1
        obtained: second-hand
        validity: all heights
        columns: {exposure: word, alpha: number, height: ft, pressure: psf}
        rows:
          - [B, 7.0, 1200, ~]
          - [C, 9.5, 900, 16]
      """;

  private final Table table = TablesReader.read("t.yaml", TEXT).get("terrain");

  @Test
  void aColumnsUnitHoldsForItsCells() {
    assertThat(table.row("exposure", "B").orElseThrow().number("height"))
        .isCloseTo(365.76, within(1e-9));
  }

  @Test
  void anEmptyCellIsNoNumber() {
    assertThat(table.row("exposure", "B").orElseThrow().find("pressure")).isEmpty();
    assertThat(table.row("exposure", "C").orElseThrow().find("pressure")).isPresent();
  }

  @Test
  void aTableKeepsItsSource() {
    assertThat(table.source().clause()).isEqualTo("Table 26.11-1");
    assertThat(table.source().obtained()).isEqualTo("second-hand");
  }

  @Test
  void aRowWithAMissingCellIsRefused() {
    String text = TEXT.replace("[B, 7.0, 1200, ~]", "[B, 7.0]");
    assertThatThrownBy(() -> TablesReader.read("t.yaml", text)).hasMessageContaining("terrain");
  }
}

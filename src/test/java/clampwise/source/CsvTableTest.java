package clampwise.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CsvTableTest {

  private final Problems problems = new Problems();

  @Test
  void aCellKnowsItsLineAndColumn() {
    CsvTable table = read("seam,along\n1,231 mm\n2, 690 mm\n").orElseThrow();
    assertThat(table.rows().get(0).get(1).at()).isEqualTo(span(2, 3, 2, 9));
    assertThat(table.rows().get(1).get(1).text()).isEqualTo("690 mm");
    assertThat(table.rows().get(1).get(1).at()).isEqualTo(span(3, 3, 3, 10));
  }

  @Test
  void quotedCellsMayHoldCommasQuotesAndLineEnds() {
    CsvTable table = read("a,b\r\n\"x, \"\"y\"\"\r\nz\",2\r\n3,4").orElseThrow();
    assertThat(table.rows().get(0).get(0).text()).isEqualTo("x, \"y\"\r\nz");
    assertThat(table.rows().get(0).get(1).at()).isEqualTo(span(3, 4, 3, 5));
    assertThat(table.rows().get(1).get(1).at()).isEqualTo(span(4, 3, 4, 4));
  }

  @Test
  void emptyRowsAndCommentsAreSkippedAndCounted() {
    CsvTable table = read("seam,along\n\n# by hand\n1,2 m\n").orElseThrow();
    assertThat(table.rows()).hasSize(1);
    assertThat(table.rows().get(0).get(1).at().start()).isEqualTo(new Position(4, 3));
  }

  @Test
  void semicolonsPartCellsIfThereIsNoComma() {
    assertThat(read("seam;along\n1;2.5 m\n").orElseThrow().rows().get(0))
        .extracting(Node.Scalar::text)
        .isEqualTo(List.of("1", "2.5 m"));
  }

  @Test
  void anEmptyTableIsReported() {
    assertThat(read("\n\n")).isEmpty();
    assertThat(problems.sorted()).extracting(Problem::found).containsExactly("an empty table");
  }

  @Test
  void aQuoteThatIsNeverClosedIsReportedAtItsRow() {
    assertThat(read("a,b\n1,2\n3,\"4\n")).isEmpty();
    assertThat(problems.sorted()).hasSize(1);
    assertThat(problems.sorted().get(0).at().start().line()).isBetween(2, 3);
  }

  @Test
  void aHundredThousandRowsAreRead() {
    StringBuilder text = new StringBuilder("seam,along\n");
    for (int i = 1; i <= 100_000; i++) {
      text.append(i).append(',').append(i * 457).append(" mm\n");
    }
    CsvTable table = read(text.toString()).orElseThrow();
    assertThat(table.rows()).hasSize(100_000);
    assertThat(table.rows().get(99_999).get(1).at().start()).isEqualTo(new Position(100_001, 8));
  }

  private Optional<CsvTable> read(String text) {
    return CsvTable.read("seams.csv", text, problems);
  }

  private static Span span(int line, int column, int endLine, int endColumn) {
    return new Span("seams.csv", new Position(line, column), new Position(endLine, endColumn));
  }
}

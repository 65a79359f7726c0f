package clampwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.review.QuantityTaker;
import clampwise.review.TakenOff;
import clampwise.source.CsvText;
import clampwise.source.SourceFiles;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The three forms of a take-off say the same. */
class TakeoffReportsTest {

  private static final Path DAIRY = Path.of("examples/dairy-l-shaped/job.yaml");
  private static final QuantityTaker TAKER = new QuantityTaker(Optional.empty());

  private static String json(List<TakenOff> jobs) {
    StringWriter out = new StringWriter();
    TakeoffJson.write(jobs, "0.1.0", out);
    return out.toString();
  }

  static String text(TakenOff job) {
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TakeoffText(sheet).write(job);
    return sheet.toString();
  }

  private static List<TakenOff> examples() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("examples"))) {
      return folders.sorted().map(each -> TAKER.takeOff(each.resolve("job.yaml"))).toList();
    }
  }

  private static TakenOff unreadable() {
    byte[] text = "job: 7\nfeilds: {}\n".getBytes(StandardCharsets.UTF_8);
    return TAKER.takeOff("=job.yaml", text, SourceFiles.none());
  }

  private static List<CSVRecord> table(String csv) throws IOException {
    CSVFormat format =
        CSVFormat.Builder.create(CSVFormat.RFC4180).setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(csv), format)) {
      return parser.getRecords();
    }
  }

  @Test
  void whatIsWrittenHoldsToThePublishedSchema() throws IOException {
    String published = Files.readString(Path.of("shared/takeoff.schema.json"));
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(published);
    assertThat(schema.validate(json(examples()), InputFormat.JSON)).isEmpty();
    assertThat(schema.validate(json(List.of(unreadable())), InputFormat.JSON)).isEmpty();
    String other = json(List.of()).replace("clampwise-takeoff/1", "something else");
    assertThat(schema.validate(other, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void theTableAndTheJsonHoldTheSameParts() throws IOException {
    List<TakenOff> dairy = List.of(TAKER.takeOff(DAIRY));
    JsonNode parts = new ObjectMapper().readTree(json(dairy)).at("/jobs/0/parts");
    List<CSVRecord> rows =
        table(TakeoffCsv.of(dairy)).stream()
            .filter(row -> row.get("group").equals("part"))
            .toList();
    assertThat(rows).hasSameSizeAs(parts).hasSize(7);
    for (int i = 0; i < rows.size(); i++) {
      assertThat(rows.get(i).get("what")).isEqualTo(parts.get(i).get("kind").asText());
      assertThat(rows.get(i).get("drawn")).isEqualTo(parts.get(i).get("drawn").asText());
      assertThat(rows.get(i).get("quantity")).isEqualTo(parts.get(i).get("order").asText());
    }
  }

  @Test
  void everyRowOfATableHasEveryColumnAndNamesItsJob() throws IOException {
    List<CSVRecord> rows = table(TakeoffCsv.of(examples()));
    assertThat(rows).allMatch(CSVRecord::isConsistent);
    assertThat(rows).extracting(row -> row.get("file")).contains("examples/barn/job.yaml");
  }

  @Test
  void noCellOfATableStartsLikeAFormula() {
    String csv = CsvText.of(List.of(List.of("=1+1", "-2-1", "@a", "+a", "-2.5", "SC-A", "-")));
    assertThat(csv).isEqualTo("'=1+1,'-2-1,'@a,'+a,-2.5,SC-A,'-\r\n");
  }

  @Test
  void noLineIsWiderThanThePage() throws IOException {
    assertThat(examples())
        .allSatisfy(job -> assertThat(text(job).lines()).allMatch(line -> line.length() <= 80));
  }

  @Test
  void theSameJobGivesTheSameBytes() {
    List<TakenOff> once = List.of(TAKER.takeOff(DAIRY));
    List<TakenOff> again = List.of(new QuantityTaker(Optional.empty()).takeOff(DAIRY));
    assertThat(json(once)).isEqualTo(json(again));
    assertThat(TakeoffCsv.of(once)).isEqualTo(TakeoffCsv.of(again));
  }

  @Test
  void nothingInAJobSpeaksToATerminal() {
    byte[] job = "job: \"a\\e[31m\"\n".getBytes(StandardCharsets.UTF_8);
    TakenOff taken = TAKER.takeOff("job.yaml", job, SourceFiles.none());
    assertThat(text(taken)).doesNotContain("\u001b");
    assertThat(json(List.of(taken))).doesNotContain("\u001b");
  }

  @Test
  void whatCouldNotBeReadComesFirst() {
    assertThat(text(unreadable())).contains("Could not be read (").contains("feilds");
  }
}

package clampwise.report;

import clampwise.catalogue.Limit;
import clampwise.review.Cautions;
import clampwise.review.TakenOff;
import clampwise.takeoff.Comparison;
import clampwise.takeoff.Freight;
import clampwise.takeoff.NotCounted;
import clampwise.takeoff.PartLine;
import clampwise.takeoff.Quantities;
import clampwise.takeoff.Run;
import clampwise.takeoff.Side;
import clampwise.takeoff.Task;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;

/** Take-offs as JSON of the shape {@value #FORMAT}, in SI units. */
public final class TakeoffJson {

  /** Name and version of the shape; the number grows when a reader of it could break. */
  public static final String FORMAT = "clampwise-takeoff/1";

  private static final int MOST_DECIMALS = 6;

  private final JsonGenerator json;
  private final JsonParts parts;

  private TakeoffJson(JsonGenerator json) {
    this.json = json;
    this.parts = new JsonParts(json);
  }

  /**
   * Writes one document for all jobs of a run.
   *
   * @param toolVersion version of this program
   */
  public static void write(List<TakenOff> jobs, String toolVersion, Writer out) {
    try (JsonGenerator json = JsonReport.generator(out)) {
      TakeoffJson document = new TakeoffJson(json);
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      json.writeStringField("version", toolVersion);
      document.parts.list("jobs", jobs, document::job);
      json.writeArrayFieldStart("cautions");
      json.writeString(Cautions.NO_APPROVAL_BY_NUMBERS);
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void job(TakenOff job) throws IOException {
    json.writeStringField("file", job.file());
    json.writeStringField("job", job.title());
    parts.list("problems", job.problems(), parts::problem);
    if (job.quantities().isPresent()) {
      quantities(job.quantities().get());
    }
  }

  private void quantities(Quantities quantities) throws IOException {
    number("spares-share", quantities.spares());
    parts.list("parts", quantities.lines(), this::line);
    parts.list("lengths", quantities.runs(), this::run);
    if (quantities.freight().isPresent()) {
      freight(quantities.freight().get());
    }
    if (quantities.crew().isPresent()) {
      parts.list("crew", quantities.crew().get().tasks(), this::task);
      number("crew-time-s", quantities.crew().get().seconds());
    }
    if (quantities.comparison().isPresent()) {
      comparison(quantities.comparison().get());
    }
    parts.list("not-counted", quantities.notCounted(), this::notCounted);
  }

  private void line(PartLine line) throws IOException {
    json.writeStringField("kind", line.part().kind().word());
    json.writeStringField("part", line.part().name());
    json.writeNumberField("drawn", line.count());
    json.writeNumberField("spares", line.spares());
    json.writeNumberField("order", line.order());
    number("mass-each-kg", line.eachKg());
    number("mass-kg", line.orderKg());
  }

  private void run(Run run) throws IOException {
    json.writeStringField("what", run.what());
    number("length-m", run.lengthM());
    json.writeStringField("from", run.from());
  }

  private void freight(Freight freight) throws IOException {
    json.writeObjectFieldStart("freight");
    json.writeNumberField("pallets-fewest", freight.fewest());
    json.writeNumberField("pallets-most", freight.most());
    json.writeNumberField("modules-per-pallet-least", freight.packing().least());
    json.writeNumberField("modules-per-pallet-most", freight.packing().most());
    number("pallet-each-kg", freight.palletKg());
    number("modules-kg", freight.modulesKg());
    number("hardware-kg", freight.hardwareKg());
    number("total-kg", freight.totalKg());
    number("hardware-share", freight.hardwareShare());
    json.writeEndObject();
  }

  private void task(Task task) throws IOException {
    json.writeStringField("phase", task.phase().word());
    json.writeStringField("of", task.what());
    number("number", task.number());
    number("each-s", task.each());
    number("time-s", task.seconds());
  }

  private void comparison(Comparison comparison) throws IOException {
    json.writeObjectFieldStart("comparison");
    side("drawn", comparison.drawn());
    side("railed", comparison.railed());
    parts.list("assumed", comparison.assumed(), this::assumed);
    json.writeEndObject();
  }

  private void side(String name, Side side) throws IOException {
    json.writeObjectFieldStart(name);
    json.writeNumberField("attachments", side.attachments());
    json.writeNumberField("mid-clamps", side.midClamps());
    json.writeNumberField("end-clamps", side.endClamps());
    number("rail-m", side.railM());
    json.writeNumberField("rail-pieces", side.railPieces());
    json.writeNumberField("splices", side.splices());
    json.writeNumberField("jumpers", side.jumpers());
    json.writeNumberField("lugs", side.lugs());
    number("hardware-kg", side.hardwareKg());
    number("crew-time-s", side.crewS());
    json.writeEndObject();
  }

  private void assumed(Limit limit) throws IOException {
    json.writeStringField("key", limit.key());
    number("value-si", limit.si());
    json.writeStringField("unit", limit.unit().symbol());
    json.writeStringField("obtained", limit.obtained());
    json.writeStringField("validity", limit.validity());
  }

  private void notCounted(NotCounted missing) throws IOException {
    json.writeStringField("what", missing.what());
    json.writeStringField("reason", missing.reason());
  }

  private void number(String name, Optional<Double> value) throws IOException {
    if (value.isPresent()) {
      number(name, value.get());
    }
  }

  /** Without the noise that sums leave in the last digits. */
  private void number(String name, double value) throws IOException {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(MOST_DECIMALS, RoundingMode.HALF_UP);
    json.writeFieldName(name);
    json.writeRawValue(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
  }
}

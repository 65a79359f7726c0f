package clampwise.batch;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clampwise.report.LineReport;
import clampwise.report.Paint;
import clampwise.report.ReportKind;
import clampwise.report.Run;
import clampwise.report.SampleReview;
import clampwise.report.Sheet;
import clampwise.report.TextReport;
import clampwise.review.Review;
import clampwise.review.Reviewer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecordCodecTest {

  private static final RecordCodec<Review> CODEC = new RecordCodec<>(Review.class);
  private static final Reviewer REVIEWER = new Reviewer();

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("examples"))) {
      return files.filter(file -> file.endsWith("job.yaml")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void whatIsReadBackSaysTheSameInEveryReportThatNeedsNoFacts(Path example) throws IOException {
    Review review = REVIEWER.review(example);
    byte[] bytes = CODEC.encode(review);
    Review again = CODEC.decode(bytes);
    assertThat(CODEC.encode(again)).isEqualTo(bytes);
    assertThat(again.facts()).isEmpty();
    sameReports(review, again);
  }

  @Test
  void reviewsMadeByHandAreReadBackToo() throws IOException {
    for (Review review :
        List.of(
            SampleReview.full(), SampleReview.of(), SampleReview.saying("é\u0000\ud83c\udf1e"))) {
      sameReports(review, CODEC.decode(CODEC.encode(review)));
    }
  }

  private static void sameReports(Review review, Review again) throws IOException {
    for (ReportKind kind :
        List.of(
            ReportKind.SARIF,
            ReportKind.JUNIT,
            ReportKind.MARKDOWN,
            ReportKind.FINDINGS,
            ReportKind.JSON)) {
      assertThat(report(kind, again)).as(kind.name()).isEqualTo(report(kind, review));
    }
    assertThat(text(again)).isEqualTo(text(review));
    assertThat(lines(again)).isEqualTo(lines(review));
  }

  private static String report(ReportKind kind, Review review) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    kind.write(new Run(List.of(review), "1"), out);
    return out.toString(UTF_8);
  }

  private static String text(Review review) {
    Sheet sheet = new Sheet(80, Paint.NONE);
    new TextReport(sheet).write(review);
    return sheet.toString();
  }

  private static String lines(Review review) {
    StringBuilder out = new StringBuilder();
    new LineReport(out).write(review);
    return out.toString();
  }

  private enum Word {
    ONE,
    TWO
  }

  private record Inner(String name, int count) {}

  private record Everything(
      String text,
      int whole,
      double number,
      boolean flag,
      Word word,
      List<Inner> list,
      Optional<Inner> perhaps,
      Optional<Double> none) {}

  private static final RecordCodec<Everything> ALL = new RecordCodec<>(Everything.class);

  private static Everything drawn(Random random) {
    List<Inner> list = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      list.add(new Inner("n" + random.nextInt(3), random.nextInt()));
    }
    double number = Double.longBitsToDouble(random.nextLong());
    return new Everything(
        "n" + random.nextInt(3),
        random.nextInt(),
        Double.isNaN(number) ? Double.NaN : number,
        random.nextBoolean(),
        Word.values()[random.nextInt(2)],
        list,
        list.stream().findFirst(),
        Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void everyValueIsReadBackAsItWas(int seed) throws IOException {
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      Everything value = drawn(random);
      assertThat(ALL.decode(ALL.encode(value))).isEqualTo(value);
    }
    Everything odd =
        new Everything(
            "\ud800",
            0,
            -0.0,
            true,
            Word.ONE,
            List.of(),
            Optional.empty(),
            Optional.of(Double.NEGATIVE_INFINITY));
    assertThat(ALL.decode(ALL.encode(odd))).isEqualTo(odd);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void bytesThatAreNotWhatWasWrittenAreAnErrorOrAnotherValueOfTheType(int seed) {
    Random random = new Random(seed);
    int errors = 0;
    for (int i = 0; i < 2000; i++) {
      byte[] bytes = ALL.encode(drawn(random));
      byte[] broken =
          Arrays.copyOf(
              bytes, random.nextInt(4) == 0 ? random.nextInt(bytes.length) : bytes.length);
      for (int n = random.nextInt(3); n >= 0 && broken.length > 0; n--) {
        broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
      }
      errors += isError(broken) ? 1 : 0;
    }
    assertThat(errors).isBetween(1000, 2000);
  }

  private static boolean isError(byte[] bytes) {
    try {
      Everything value = ALL.decode(bytes);
      assertThat(value.list()).allMatch(Inner.class::isInstance);
      return false;
    } catch (IOException e) {
      return true;
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{}",
        "[\"a\",1,1.0,true,\"ONE\",0,0,0",
        "[\"a\",1,1.0,true,\"ONE\",0,0,0,0]",
        "[\"a\",1,1.0,true,\"ONE\",0,0,0] []",
        "[\"a\",1,1.0,true,\"THREE\",0,0,0]",
        "[\"a\",1.5,1.0,true,\"ONE\",0,0,0]",
        "[7,1,1.0,true,\"ONE\",0,0,0]",
        "[\"a\",1,\"1.0\",true,\"ONE\",0,0,0]",
        "[\"a\",1,1.0,true,\"ONE\",0,2,0]",
        "[\"a\",1,1.0,true,\"ONE\",2147483647,0,0]",
        "[\"a\",1,1.0,true,\"ONE\",-1,0,0]",
        "[\"a\",99999999999,1.0,true,\"ONE\",0,0,0]",
        "[null,1,1.0,true,\"ONE\",0,0,0]"
      })
  void onlyExactlyTheTypeIsRead(String row) throws IOException {
    byte[] right = "[\"a\",1,1.0,true,\"ONE\",0,0,0]".getBytes(UTF_8);
    assertThat(ALL.decode(right).text()).isEqualTo("a");
    assertThatThrownBy(() -> ALL.decode(row.getBytes(UTF_8))).isInstanceOf(IOException.class);
  }

  private record Unshaped(Object any) {}

  @Test
  void aTypeWithoutAShapeIsRefusedAtOnce() {
    assertThatThrownBy(() -> new RecordCodec<>(Unshaped.class))
        .isInstanceOf(IllegalStateException.class);
  }
}

package clampwise.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import clampwise.finding.Threshold;
import clampwise.report.SampleReview;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JoiningTest {

  @TempDir private Path folder;

  private static List<String> names(int count) {
    return IntStream.range(0, count).mapToObj(number -> "job " + number).toList();
  }

  private static Part part(int part, int parts, int jobs) {
    Share share = new Share(part, parts);
    List<JobResult> results =
        IntStream.range(0, share.of(jobs))
            .mapToObj(own -> "job " + share.place(own))
            .map(
                name ->
                    name.endsWith("3")
                        ? JobResult.fault(name, name + " broke")
                        : JobResult.of(name, SampleReview.saying(name)))
            .toList();
    return new Part("b", "", "", Optional.empty(), Part.digest(names(jobs)), jobs, share, results);
  }

  @ParameterizedTest
  @CsvSource({"0, 1", "0, 3", "1, 1", "1, 4", "10, 3", "10, 10", "100, 7"})
  void everyJobFallsToOneShareAndComesBackToItsPlace(int jobs, int parts) throws IOException {
    List<Part> all = new ArrayList<>();
    List<String> files = new ArrayList<>();
    for (int part = parts; part >= 1; part--) {
      Path file = folder.resolve("part " + part);
      Files.write(file, part(part, parts, jobs).bytes());
      all.add(Part.read(file));
      files.add(file.toString());
    }
    Joining joining = Joining.of(all, files);
    assertThat(joining.obstacle("b")).isEmpty();
    assertThat(joining.results().stream().map(JobResult::name)).isEqualTo(names(jobs));
    assertThat(joining.results())
        .allMatch(result -> result.review().isEmpty() == result.name().endsWith("3"))
        .allMatch(result -> result.review().isEmpty() != result.fault().isEmpty());
  }

  private static String obstacle(Part... parts) {
    List<String> names = IntStream.range(0, parts.length).mapToObj(i -> "p" + i).toList();
    return Joining.of(List.of(parts), names).obstacle("b").orElse("none");
  }

  private static Part from(Part part, String build, String rules, Optional<Threshold> failOn) {
    return new Part(
        build, rules, part.asked(), failOn, part.list(), part.jobs(), part.share(), part.results());
  }

  @Test
  void partsThatDoNotBelongTogetherAreToldApart() {
    Part first = part(1, 2, 5);
    Part second = part(2, 2, 5);
    assertThat(obstacle(first, second)).isEqualTo("none");
    assertThat(obstacle(first)).isEqualTo("part 2 of 2 missing");
    assertThat(obstacle(part(2, 4, 9))).isEqualTo("parts 1, 3, 4 of 4 missing");
    assertThat(obstacle(first, second, first)).isEqualTo("p0 and p2 are both part 1");
    assertThat(obstacle(first, part(2, 2, 6)))
        .isEqualTo("p1 is part of another list of jobs than p0");
    assertThat(obstacle(first, part(2, 3, 5))).isEqualTo("p1 is one of 3 parts, p0 one of 2");
    assertThat(obstacle(first, from(second, "c", "", Optional.empty())))
        .isEqualTo("p1 was written by another version of clampwise or of Java");
    assertThat(obstacle(first, from(second, "b", "r", Optional.empty())))
        .isEqualTo("p1 was made with other own rules than p0");
    Part later =
        new Part(
            "b",
            "",
            "2026-01-01",
            Optional.empty(),
            first.list(),
            5,
            second.share(),
            second.results());
    assertThat(obstacle(first, later))
        .isEqualTo("p1 was made with another --policy or --on than p0");
    assertThat(obstacle(first, from(second, "b", "", Optional.of(Threshold.NOTE))))
        .isEqualTo("p1 was made with another --fail-on than p0");
  }

  @Test
  void aFileThatIsNotAWholePartIsRefused() throws IOException {
    Path file = folder.resolve("part");
    byte[] whole = part(1, 2, 5).bytes();
    Random random = new Random(1);
    for (int i = 0; i < 300; i++) {
      Files.write(file, Arrays.copyOf(whole, random.nextInt(whole.length)));
      assertThatThrownBy(() -> Part.read(file)).isInstanceOf(IOException.class);
    }
    Part lacking = part(1, 2, 5);
    Part short1 =
        new Part("b", "", "", Optional.empty(), lacking.list(), 5, lacking.share(), List.of());
    Files.write(file, short1.bytes());
    assertThatThrownBy(() -> Part.read(file)).isInstanceOf(IOException.class);
    Files.write(file, Packed.pack("result 1", new byte[0]));
    assertThatThrownBy(() -> Part.read(file)).isInstanceOf(IOException.class);
  }
}

package clampwise.job;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.References;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** 500 seeded slips of hand over the example jobs: never an exception, always a place. */
class MutatedJobsTest {

  private static final int MUTATIONS = 500;
  private static final Catalogue CATALOGUE = CatalogueReader.read();

  static List<Path> examples() throws IOException {
    return SchemaAgreesTest.examples().toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aSlipOfHandGivesAJobOrProblemsWithTheirPlaces(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file);
    Random random = new Random(file.getParent().getFileName().toString().hashCode());
    int noticed = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      noticed += check(file, String.join("\n", mutated(lines, random))) ? 1 : 0;
    }
    assertThat(noticed).as("slips that were noticed").isGreaterThan(MUTATIONS / 3);
  }

  private static boolean check(Path file, String text) {
    Problems problems = new Problems();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Optional<Job> job = JobReader.read("job.yaml", bytes, SourceFiles.beside(file), problems);
    job.ifPresent(read -> References.check(read, CATALOGUE, problems));
    assertThat(job.isPresent() || !problems.isEmpty()).as(text).isTrue();
    long lines = text.lines().count() + 1;
    for (Problem problem : problems.sorted()) {
      assertThat(problem.at().start().line()).as("%s", problem).isBetween(1, (int) lines);
      assertThat(problem.at().start().column()).as("%s", problem).isPositive();
      assertThat(problem.found()).isNotBlank();
      assertThat(problem.expected()).isNotBlank();
    }
    return !problems.isEmpty();
  }

  private static List<String> mutated(List<String> lines, Random random) {
    List<String> changed = new ArrayList<>(lines);
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    switch (random.nextInt(7)) {
      case 0 -> changed.remove(at);
      case 1 -> changed.add(at, line);
      case 2 -> changed.set(at, retyped(line, random));
      case 3 -> changed.set(at, line.substring(0, random.nextInt(line.length() + 1)));
      case 4 -> changed.set(at, " ".repeat(random.nextInt(8)) + line.strip());
      case 5 -> changed.set(at, changed.set(random.nextInt(lines.size()), line));
      default -> changed.subList(at, changed.size()).clear();
    }
    return changed;
  }

  /** One character struck wrong, left out or doubled. */
  private static String retyped(String line, Random random) {
    if (line.isEmpty()) {
      return "x";
    }
    int at = random.nextInt(line.length());
    String keys = "abcxyz019:-,.[]{}'\"#&*!|>%@ \t~";
    String struck = String.valueOf(keys.charAt(random.nextInt(keys.length())));
    return switch (random.nextInt(3)) {
      case 0 -> line.substring(0, at) + struck + line.substring(at + 1);
      case 1 -> line.substring(0, at) + line.substring(at + 1);
      default -> line.substring(0, at) + struck + line.substring(at);
    };
  }
}

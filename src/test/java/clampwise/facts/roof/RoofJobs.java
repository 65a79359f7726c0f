package clampwise.facts.roof;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Fact;
import clampwise.facts.Facts;
import clampwise.facts.Missing;
import clampwise.job.JobReader;
import clampwise.source.Problems;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A base job of the rules with some of its text replaced, and the facts it gives. */
final class RoofJobs {

  private final Facts facts;

  private RoofJobs(Facts facts) {
    this.facts = facts;
  }

  static RoofJobs seams(String... replacements) {
    return of("seam-roof", replacements);
  }

  static RoofJobs ribs(String... replacements) {
    return of("rib-roof", replacements);
  }

  static RoofJobs crests(String... replacements) {
    return of("corrugated-roof", replacements);
  }

  private static RoofJobs of(String base, String... replacements) {
    String text = text(Path.of("rules/base", base + ".yaml"));
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    Problems problems = new Problems();
    Facts facts =
        JobReader.read(base, text, problems)
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
            .orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return new RoofJobs(facts);
  }

  <T extends Fact> List<T> facts(Class<T> type) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** Why a question has no answer, each reason once. */
  List<String> missing(Class<? extends Fact> question) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == question)
        .map(Missing::reason)
        .distinct()
        .toList();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package clampwise.facts.loads;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.Limits;
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

/** The base job on seams with some of its text replaced, and what follows from it. */
final class ClaimJobs {

  private static final Limits LIMITS = LimitsReader.read();

  private final Facts facts;

  private ClaimJobs(Facts facts) {
    this.facts = facts;
  }

  /** Each second text stands for the one before it. */
  static ClaimJobs with(String... replacements) {
    String text = text();
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(text).contains(replacements[i]);
      text = text.replace(replacements[i], replacements[i + 1]);
    }
    Problems problems = new Problems();
    Facts facts =
        JobReader.read("job", text, problems)
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LIMITS, problems))
            .orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return new ClaimJobs(facts);
  }

  /** The base job with more among its claims. */
  static ClaimJobs claiming(String claims, String... replacements) {
    String[] all = java.util.Arrays.copyOf(replacements, replacements.length + 2);
    all[replacements.length] = "claims:\n";
    all[replacements.length + 1] = "claims:\n" + claims.indent(2);
    return with(all);
  }

  <T extends Fact> List<T> facts(Class<T> type) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  List<String> missing(Class<? extends Fact> question) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == question)
        .map(Missing::reason)
        .distinct()
        .toList();
  }

  /** The only field. */
  FieldSite site() {
    var plane = facts.layout().planes().get(0);
    return new FieldSite(facts.layout(), plane, plane.fields().get(0), LIMITS);
  }

  private static String text() {
    try {
      return Files.readString(Path.of("rules/base/seam-roof.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

package clampwise.facts;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.job.JobReader;
import clampwise.source.Node;
import clampwise.source.Overlay;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A base job of the rules with more laid over it, and the facts it gives. */
public final class BaseJob {

  private final Facts facts;

  private BaseJob(Facts facts) {
    this.facts = facts;
  }

  /**
   * The facts of a base job.
   *
   * @param base its name, such as {@code seam-roof}
   * @param over YAML that is laid over it; {@code ~} removes
   */
  public static BaseJob with(String base, String over) {
    Problems problems = new Problems();
    Node root = tree(base, problems);
    Node more = YamlReader.read("more", over, problems).orElse(root);
    Facts facts =
        JobReader.read(base, Overlay.lay(root, more), problems)
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
            .orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return new BaseJob(facts);
  }

  public <T extends Fact> List<T> facts(Class<T> type) {
    return facts.facts().stream().filter(type::isInstance).map(type::cast).toList();
  }

  public <T extends Fact> T only(Class<T> type) {
    assertThat(facts(type)).hasSize(1);
    return facts(type).get(0);
  }

  /** Why a question has no answer, each reason once. */
  public List<String> missing(Class<? extends Fact> question) {
    return facts.missing().stream()
        .filter(missing -> missing.question() == question)
        .map(Missing::reason)
        .distinct()
        .toList();
  }

  private static Node tree(String base, Problems problems) {
    try {
      String text = Files.readString(Path.of("rules/base", base + ".yaml"));
      return YamlReader.read(base, text, problems).orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

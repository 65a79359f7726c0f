package clampwise.facts;

import static org.assertj.core.api.Assertions.assertThat;

import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.layout.Layout;
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

/** A job for tests, often a base job of the rules with something changed, and its facts. */
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
    Node root = YamlReader.read(base, text(base), problems).orElseThrow();
    Node more = YamlReader.read("more", over, problems).orElse(root);
    return of(Overlay.lay(root, more), problems);
  }

  /** A base job in whose text each second text stands for the one before it. */
  public static BaseJob replacing(String base, String... replacements) {
    return ofText(text(base), replacements);
  }

  /** A whole job in which each second text stands for the one before it. */
  public static BaseJob ofText(String text, String... replacements) {
    String replaced = text;
    for (int i = 0; i < replacements.length; i += 2) {
      assertThat(replaced).contains(replacements[i]);
      replaced = replaced.replace(replacements[i], replacements[i + 1]);
    }
    Problems problems = new Problems();
    return of(YamlReader.read("job.yaml", replaced, problems).orElseThrow(), problems);
  }

  private static BaseJob of(Node root, Problems problems) {
    Facts facts =
        JobReader.read("job.yaml", root, problems)
            .map(job -> Derivation.of(job, CatalogueReader.empty(), LimitsReader.read(), problems))
            .orElseThrow();
    assertThat(problems.sorted()).isEmpty();
    return new BaseJob(facts);
  }

  public Facts facts() {
    return facts;
  }

  public Layout layout() {
    return facts.layout();
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

  private static String text(String base) {
    try {
      return Files.readString(Path.of("rules/base", base + ".yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}

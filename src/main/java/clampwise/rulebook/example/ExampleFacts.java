package clampwise.rulebook.example;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.catalogue.References;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.job.JobReader;
import clampwise.source.Node;
import clampwise.source.Overlay;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.util.List;
import java.util.stream.Collectors;

/** Derives the facts of examples. Nothing comes from the catalogue: a base job writes it all. */
public final class ExampleFacts {
  private static final Catalogue NOTHING = CatalogueReader.empty();

  private final BaseJobs bases;

  /** Of examples that are laid over these. */
  public ExampleFacts(BaseJobs bases) {
    this.bases = bases;
  }

  /** The facts of an example; refuses what the reader does not understand. */
  public Facts of(PageExample example) {
    Problems problems = new Problems();
    Node base = bases.tree(example.base());
    Node over = YamlReader.read(example.page(), example.yaml(), problems).orElse(base);
    return facts(example.page(), Overlay.lay(base, over), problems);
  }

  /** The facts of a base job as it stands. */
  public Facts of(String base) {
    return facts(base, bases.tree(base), new Problems());
  }

  private static Facts facts(String name, Node job, Problems problems) {
    return JobReader.read(name, job, problems)
        .map(read -> References.check(read, NOTHING, problems))
        .map(read -> Derivation.of(read, NOTHING, LimitsReader.read(), problems))
        .filter(facts -> problems.isEmpty())
        .orElseThrow(() -> new UnusableExample(text(problems.sorted())));
  }

  private static String text(List<Problem> problems) {
    return problems.stream()
        .map(p -> p.at() + ": " + p.found() + "; expected " + p.expected() + near(p))
        .collect(Collectors.joining("; ", "it cannot be read: ", ""));
  }

  private static String near(Problem problem) {
    return problem.nearest().map(word -> "; nearest: " + word).orElse("");
  }
}

package clampwise.rulebook;

import clampwise.catalogue.Catalogue;
import clampwise.catalogue.CatalogueReader;
import clampwise.catalogue.LimitsReader;
import clampwise.facts.Derivation;
import clampwise.facts.Facts;
import clampwise.job.JobReader;
import clampwise.rulebook.example.BaseJobs;
import clampwise.rulebook.example.ExampleFacts;
import clampwise.rulebook.example.PageExample;
import clampwise.source.Node;
import clampwise.source.Overlay;
import clampwise.source.Problems;
import clampwise.source.YamlReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Derives the facts of rule examples from the base jobs. */
final class ExampleJobs {
  static final Path BASES = Path.of("rules/base");
  private static final Catalogue NOTHING = CatalogueReader.empty();

  private ExampleJobs() {}

  /** The facts of an example; fails on anything the reader does not understand. */
  static Facts facts(PageExample example) {
    return new ExampleFacts(new BaseJobs(Optional.empty())).of(example);
  }

  /** The facts of an example with more laid over it; its problems do not matter. */
  static Facts facts(PageExample example, String more) {
    Problems problems = new Problems();
    Node base = tree(BASES.resolve(example.base() + ".yaml"), problems);
    Node over = YamlReader.read(example.page(), example.yaml(), problems).orElse(base);
    Node both = Overlay.lay(base, over);
    Node all = Overlay.lay(both, YamlReader.read("more", more, problems).orElse(both));
    return JobReader.read(example.page(), all, problems)
        .map(job -> Derivation.of(job, NOTHING, LimitsReader.read(), problems))
        .orElseThrow();
  }

  /** Lines of the example where findings of a rule point; 0 for a place outside the example. */
  static SortedSet<Integer> lines(Judgement judgement, String rule, PageExample example) {
    return judgement.findings().stream()
        .filter(finding -> finding.rule().equals(rule))
        .map(finding -> finding.at())
        .map(at -> at.file().equals(example.page()) ? at.start().line() : 0)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Node tree(Path file, Problems problems) {
    try {
      return YamlReader.read(file.getFileName().toString(), Files.readString(file), problems)
          .orElseThrow(() -> new AssertionError(text(problems)));
    } catch (IOException e) {
      throw new AssertionError("no base job " + file, e);
    }
  }

  private static String text(Problems problems) {
    return problems.sorted().stream()
        .map(p -> p.at() + ": found " + p.found() + ", expected " + p.expected())
        .collect(Collectors.joining("\n"));
  }
}

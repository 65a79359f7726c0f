package clampwise.policy;

import clampwise.finding.HouseRule;
import clampwise.job.Choice;
import clampwise.job.Documents.SheetKind;
import clampwise.job.Editions;
import clampwise.job.ElectricalCode;
import clampwise.job.Fire;
import clampwise.job.Named;
import clampwise.job.RecordReader;
import clampwise.job.Site;
import clampwise.job.Text;
import clampwise.rulebook.OwnRules;
import clampwise.source.Nearest;
import clampwise.source.Node;
import clampwise.source.Overlay;
import clampwise.source.Problem;
import clampwise.source.Problems;
import clampwise.source.SourceFiles;
import clampwise.source.SourceText;
import clampwise.source.YamlReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads policy files and lays the inner over the outer. */
final class PolicyReader {

  private final Problems problems = new Problems();
  private final List<SourceText> sources = new ArrayList<>();
  private final Collection<String> rules;

  PolicyReader(Collection<String> rules) {
    this.rules = rules;
  }

  /** The policy of some files, the outermost first. */
  Policy read(List<Path> files) {
    Node.Mapping whole = Underlay.EMPTY;
    for (Path file : files) {
      Optional<Node.Mapping> tree = checked(file);
      if (tree.isPresent()) {
        whole = (Node.Mapping) Overlay.lay(whole, tree.get());
      }
    }
    // What is wrong was said for each file by itself.
    Optional<PolicyFile> policy = RecordReader.read(whole, PolicyFile.class, new Problems());
    HouseLimits limits =
        HouseLimits.of(policy.map(PolicyFile::limits).orElse(Named.none()), problems);
    policy.ifPresent(this::check);
    return new Policy(policy, whole, List.copyOf(sources), limits, problems.sorted());
  }

  private Optional<Node.Mapping> checked(Path file) {
    Optional<Node.Mapping> tree =
        SourceFiles.read(file, problems).flatMap(bytes -> taken(SourceFiles.nameOf(file), bytes));
    tree.flatMap(node -> RecordReader.read(node, PolicyFile.class, problems))
        .ifPresent(this::checkReasons);
    return tree;
  }

  private void checkReasons(PolicyFile file) {
    file.rules().all().forEach(rule -> rule.value().reason().isNeeded("a reason", problems));
    file.limits().all().forEach(limit -> limit.value().reason().isNeeded("a reason", problems));
  }

  private Optional<Node.Mapping> taken(String name, byte[] bytes) {
    SourceText text = new SourceText(name, bytes);
    sources.add(text);
    if (text.saysNothing()) {
      return Optional.empty();
    }
    Optional<Node> root = YamlReader.readPart(name, bytes, problems).whole();
    if (root.isPresent() && !(root.get() instanceof Node.Mapping) && !root.get().isEmpty()) {
      String expected = "a policy: a mapping with keys such as fail-on, rules, limits";
      problems.add(Problem.of(root.get().at(), "no policy", expected));
    }
    return root.filter(Node.Mapping.class::isInstance).map(Node.Mapping.class::cast);
  }

  /** The tree of a file, if it can be read, without a word about what is wrong with it. */
  static Optional<Node.Mapping> tree(Path file) {
    Problems unheard = new Problems();
    return SourceFiles.read(file, unheard)
        .flatMap(bytes -> YamlReader.readPart(SourceFiles.nameOf(file), bytes, unheard).whole())
        .filter(Node.Mapping.class::isInstance)
        .map(Node.Mapping.class::cast);
  }

  private void check(PolicyFile policy) {
    policy.rules().all().forEach(this::checkRule);
    List<String> kinds = words(SheetKind.values());
    policy.documents().all().forEach(item -> known(item.name(), "kind of document", kinds));
    policy.codes().ifPresent(this::checkCodes);
  }

  private void checkRule(Named.Item<PolicyFile.Rule> rule) {
    if (!OwnRules.isElsewhere(rule.name().value(), rules)) {
      known(rule.name(), "rule", rules);
    }
    Choice<PolicyFile.Weight> weight = rule.value().severity();
    if (weight.value() == PolicyFile.Weight.OFF && HouseRule.is(rule.name().value())) {
      String expected = "error, warning or note: what a house writes itself is always asked about";
      problems.add(Problem.of(weight.at(), "\"off\"", expected));
    }
  }

  private void checkCodes(PolicyFile.Codes codes) {
    codes.loads().ifPresent(text -> code(text, Site.LoadCode.values()));
    codes.electrical().ifPresent(text -> code(text, ElectricalCode.values()));
    codes.fire().ifPresent(text -> code(text, Fire.RuleSet.values()));
  }

  private <E extends Enum<E>> void code(Text text, E[] codes) {
    if (Editions.of(codes, text.value()).isEmpty()) {
      List<String> known = words(codes);
      Optional<String> nearest = Nearest.to(text.value().toLowerCase(Locale.ROOT), known);
      String expected = "one of " + String.join(", ", known);
      problems.add(new Problem(text.at(), "\"" + text.value() + "\"", expected, nearest));
    }
  }

  private void known(Text name, String what, Collection<String> known) {
    if (!known.contains(name.value())) {
      String found = "the unknown " + what + " \"" + name.value() + "\"";
      String expected = what.equals("rule") ? "the id of a rule" : "a " + what;
      problems.add(new Problem(name.at(), found, expected, Nearest.to(name.value(), known)));
    }
  }

  private static <E extends Enum<E>> List<String> words(E[] values) {
    return Stream.of(values).map(Choice::word).toList();
  }
}

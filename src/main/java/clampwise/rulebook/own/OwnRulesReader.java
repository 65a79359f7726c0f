package clampwise.rulebook.own;

import static java.nio.charset.StandardCharsets.UTF_8;

import clampwise.rulebook.OwnRules;
import clampwise.rulebook.RuleCard;
import clampwise.rulebook.RuleClasses;
import clampwise.rulebook.RulePage;
import clampwise.rulebook.RuleSet;
import clampwise.rulebook.build.OwnCompiler;
import clampwise.source.Problem;
import clampwise.source.Span;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drools.model.Model;

/**
 * Reads a folder of own rules. Rules are code: a folder is only ever one that whoever runs the
 * program has named.
 */
public final class OwnRulesReader {
  private final OwnFolder folder;
  private final Optional<CompiledCache> cache;
  private final FactTypes facts = FactTypes.packed();
  private final List<RuleSource> sound = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private OwnRulesReader(OwnFolder folder, Optional<CompiledCache> cache) {
    this.folder = folder;
    this.cache = cache;
    problems.addAll(folder.problems());
  }

  /**
   * The rules of a folder, as far as they are right.
   *
   * @param shown the folder as it was named
   * @param cache where compiled rules may be kept; they are compiled each time if nowhere
   * @return empty if there is no such folder or no rule in it
   */
  public static Optional<OwnRules> read(Path folder, String shown, Optional<Path> cache)
      throws IOException {
    return OwnFolder.read(folder, shown)
        .filter(read -> !read.rules().isEmpty() || !read.problems().isEmpty())
        .map(read -> new OwnRulesReader(read, cache.map(CompiledCache::new)).read());
  }

  /** The pages of a folder, without a look at what its rules do. */
  public static List<RulePage> pages(Path folder, String shown) throws IOException {
    return OwnFolder.read(folder, shown).stream()
        .flatMap(read -> read.rules().stream().flatMap(rule -> read.page(rule).stream()))
        .toList();
  }

  private OwnRules read() {
    folder.rules().forEach(this::check);
    Map<String, byte[]> made = sound.isEmpty() ? Map.of() : made();
    for (RuleSource rule : List.copyOf(sound)) {
      byte[] errors = made.get(OwnCompiler.ERRORS + rule.rule().file());
      if (errors != null) {
        sound.remove(rule);
        problems.addAll(CompilerWords.of(rule, facts, new String(errors, UTF_8)));
      }
    }
    return rules(made);
  }

  private void check(RuleSource rule) {
    List<Problem> found = new ArrayList<>(FormCheck.of(rule, facts));
    if (folder.page(rule).isEmpty()) {
      String page = rule.rule().id() + ".md";
      found.add(rule.problem("no page beside it", page + ", which says what it checks and why"));
    }
    boolean readable = folder.problems().stream().noneMatch(p -> isOf(p, rule));
    if (found.isEmpty() && readable) {
      sound.add(rule);
    }
    problems.addAll(readable ? found : List.of());
  }

  private static boolean isOf(Problem problem, RuleSource rule) {
    return problem.at().file().equals(rule.shown());
  }

  private Map<String, byte[]> made() {
    String digest = folder.rulesDigest();
    Optional<Map<String, byte[]>> kept = cache.flatMap(known -> known.find(digest));
    if (kept.isPresent()) {
      return kept.get();
    }
    Map<String, byte[]> texts = new TreeMap<>();
    sound.forEach(rule -> texts.put(rule.rule().file(), rule.rule().text().getBytes(UTF_8)));
    Map<String, byte[]> made = CompilerDoor.compile(texts);
    Optional<String> why =
        cache.isEmpty() ? Optional.of("there is no folder for it") : cache.get().keep(digest, made);
    why.ifPresent(
        reason ->
            notes.add("own rules are compiled at every run, as they cannot be kept: " + reason));
    return made;
  }

  private OwnRules rules(Map<String, byte[]> made) {
    List<Model> models = models(made);
    RuleSet set = marked(RuleSet.of(models));
    Map<String, Span> conditions = new HashMap<>();
    List<RulePage> pages = new ArrayList<>();
    for (RuleSource rule : sound) {
      conditions.put(rule.rule().id(), rule.conditionsAt());
      folder.page(rule).ifPresent(pages::add);
    }
    List<Problem> sorted = problems.stream().distinct().sorted().toList();
    return new OwnRules(folder.digest(), set, models, pages, conditions, sorted, notes);
  }

  private static List<Model> models(Map<String, byte[]> made) {
    byte[] names = made.getOrDefault(OwnCompiler.MODELS, new byte[0]);
    return new RuleClasses(made).models(new String(names, UTF_8).lines().toList());
  }

  private static RuleSet marked(RuleSet set) {
    List<RuleCard> cards =
        set.cards().stream().map(card -> card.titled(OwnRules.MARK + card.title())).toList();
    return new RuleSet(cards, set.single(), set.models());
  }
}

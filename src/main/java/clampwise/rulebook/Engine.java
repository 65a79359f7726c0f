package clampwise.rulebook;

import clampwise.facts.Fact;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.definition.rule.Rule;
import org.kie.api.runtime.KieSession;

/** The rules that join facts, ready to be applied. */
final class Engine {
  /** Facts that share a session; small enough that a million facts need little memory. */
  private static final int TOGETHER = 20_000;

  private final KieBase base;
  private final Set<String> judged;
  private final Set<String> joined;

  private Engine(KieBase base) {
    List<Rule> rules = rulesOf(base);
    this.base = base;
    this.judged = LeftSide.typesOf(rules);
    this.joined = LeftSide.joinedTypesOf(rules);
  }

  static Engine of(List<Model> models) {
    return new Engine(KieBaseBuilder.createKieBaseFromModel(models));
  }

  /** Loads what the first session needs; may be done on another core before there are facts. */
  void prepare() {
    judge(List.of(), new Report());
  }

  /** Applies its rules to all facts. */
  void apply(List<Fact> facts, Report report) {
    batches(facts).forEach(batch -> judge(batch, report));
  }

  private void judge(List<Fact> facts, Report report) {
    KieSession session = base.newKieSession();
    try {
      session.setGlobal("report", report);
      facts.forEach(session::insert);
      session.fireAllRules();
    } finally {
      session.dispose();
    }
  }

  /** Facts that a rule joins stay together; all others are judged one by one, in any company. */
  private Collection<List<Fact>> batches(List<Fact> facts) {
    List<List<Fact>> batches = new ArrayList<>();
    List<Fact> company = only(facts, joined);
    if (!company.isEmpty()) {
      batches.add(company);
    }
    List<Fact> single = new ArrayList<>(only(facts, judged));
    single.removeIf(fact -> joined.contains(fact.getClass().getName()));
    for (int from = 0; from < single.size(); from += TOGETHER) {
      batches.add(single.subList(from, Math.min(single.size(), from + TOGETHER)));
    }
    return batches;
  }

  private static List<Fact> only(List<Fact> facts, Set<String> types) {
    return facts.stream().filter(fact -> types.contains(fact.getClass().getName())).toList();
  }

  private static List<Rule> rulesOf(KieBase base) {
    return base.getKiePackages().stream()
        .flatMap(topic -> topic.getRules().stream())
        .sorted(Comparator.comparing(Rule::getName))
        .collect(Collectors.toList());
  }
}

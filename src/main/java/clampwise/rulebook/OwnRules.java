package clampwise.rulebook;

import clampwise.source.Problem;
import clampwise.source.Span;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Model;

/**
 * Rules that a company wrote for itself, ready to be applied beside those that ship.
 *
 * @param digest fingerprint of rules and pages, which changes whenever what they find may change
 * @param rules the rules that could be compiled
 * @param models what they were compiled to
 * @param pages their pages
 * @param conditions where the conditions of each rule stand, by its id
 * @param problems what is wrong with those that are left out
 * @param notes what else whoever runs the program should know
 */
public record OwnRules(
    String digest,
    RuleSet rules,
    List<Model> models,
    List<RulePage> pages,
    Map<String, Span> conditions,
    List<Problem> problems,
    List<String> notes) {

  /** How the id of every own rule begins, and of no rule that ships. */
  public static final String PREFIX = "own-";

  /** How the title of every own rule begins. */
  public static final String MARK = "Own rule: ";

  /** None. */
  public static final OwnRules NONE =
      new OwnRules("", RuleSet.NONE, List.of(), List.of(), Map.of(), List.of(), List.of());

  /**
   * Whether an id may be that of an own rule which a run has not been given: of it nothing is
   * known.
   *
   * @param known the ids of all rules of the run
   */
  public static boolean isElsewhere(String id, Collection<String> known) {
    return id.startsWith(PREFIX) && known.stream().noneMatch(one -> one.startsWith(PREFIX));
  }

  /** The page of one of its rules. */
  public Optional<RulePage> page(String id) {
    for (RulePage page : pages) {
      if (page.id().equals(id)) {
        return Optional.of(page);
      }
    }
    return Optional.empty();
  }
}
